import table from './metric-threads.json' with { type: 'json' };

export interface MetricThread {
  /** `M12`. */
  readonly size: string;
  readonly diameterM: number;
  readonly pitchM: number;
  /** Nominal stress area as printed [m²]. */
  readonly stressAreaM2: number;
}

/**
 * ISO metric coarse threads M3 to M39.
 * @source iso-898-1:2013 (stress areas as printed); iso-261 (pitches from memory, unverified)
 */
export const metricThreads: readonly MetricThread[] = table.rows;
