import type { Medium } from '@flangewise/model';

/** A medium of the process, resolved against the tables as far as they know it. */
export interface ConditionMedium {
  /** As it was named. */
  readonly name: string;
  readonly role: Medium['role'];
  /** Whether any table knows the substance. */
  readonly isKnown: boolean;
  /** CAS number where the tables of fluids hold it. */
  readonly cas?: string;
  readonly massFraction?: number;
  readonly dry?: boolean;
}

/**
 * What one vessel set has to stand, in SI, pressures gauge. Undefined: nobody said, and nothing was assumed.
 * A rule names the conditions that it reads; only those rules are tabulated again when one of them changes.
 */
export interface Conditions {
  readonly media: readonly ConditionMedium[];
  /** Gases that are charged, by name. */
  readonly gases: readonly string[];
  readonly processKind?: string;

  /** Highest pressure as it was stated, and what was meant by it. */
  readonly statedPressurePaGauge?: number;
  readonly pressureMeans?: 'total' | 'partial pressure of the gas';
  /** Highest total pressure: as stated, or gas plus vapour where the partial pressure was stated. */
  readonly pressureMaxPaGauge?: number;
  readonly vacuum?: boolean;
  readonly temperatureMinK?: number;
  readonly temperatureUsualK?: number;
  readonly temperatureMaxK?: number;

  /** Liquid as it is filled. */
  readonly batchVolumeM3?: number;
  /** The same liquid at the highest temperature. */
  readonly hotVolumeM3?: number;
  /** The expansion rests on an estimate or on a value from memory. */
  readonly hotVolumeEstimated?: boolean;
  /** Wanted volume of the vessel. */
  readonly vesselVolumeM3?: number;
  /** Largest hot fill, share of the inner volume. */
  readonly fillLimit: number;

  readonly viscosityMinPaS?: number;
  readonly viscosityMaxPaS?: number;
  readonly densityKgPerM3?: number;
  readonly heatCapacityJPerKgK?: number;
  /** At which the main liquid boils at 1 atm; a solution in water as water. */
  readonly boilingPointK?: number;
  readonly solidsMassFraction?: number;
  readonly particleSizeM?: number;
  readonly solidDensityKgPerM3?: number;
  readonly speedMinPerS?: number;
  readonly speedMaxPerS?: number;
  /** On the stirrer torque. */
  readonly serviceFactor: number;

  readonly exothermic?: boolean;
  readonly selfReactive?: boolean;
  readonly calorimetry?: boolean;
  /** Highest heat given by the reaction. */
  readonly peakHeatW?: number;
  readonly peakUptakeMolPerS?: number;
  /** Negative gives heat; per mole of `heatOfReactionPer`. */
  readonly heatOfReactionJPerMol?: number;
  readonly heatOfReactionPer?: string;
  readonly concentrationMolPerM3?: number;
  readonly heatUpTimeS?: number;

  readonly supplyPressurePaGauge?: number;
  readonly regulatorKv?: number;

  readonly zone?: string;
  /** What the zone and the media ask of equipment; absent where no zone was said. */
  readonly marking?: {
    readonly category: string;
    readonly gasGroup: string;
    readonly temperatureClass: string;
    /** The substance that decides the temperature class. */
    readonly from: string;
    /** Highest temperature of any surface in the zone [K]. */
    readonly surfaceLimitK: number;
  };
  /** Media that may burn and have no ignition data on file, by name. */
  readonly ignitionUnknown?: readonly string[];
  readonly ceilingHeightM?: number;
  readonly country?: string;

  readonly construction?: 'metal' | 'glass' | 'lined';
  readonly material?: string;
  readonly families?: readonly string[];
  readonly noMetalContact?: boolean;
  readonly seeInside?: boolean;
  readonly bottomOutlet?: boolean;
  readonly openingsPerDay?: number;
  readonly uptakeRecorded?: boolean;
  readonly inerting?: boolean;
  readonly tilt?: boolean;
  readonly sampling?: boolean;
  readonly dosingAgainstPressure?: boolean;
  readonly refluxCondenser?: boolean;
  readonly catalystBasket?: boolean;
  readonly processProbes?: readonly string[];
  /** Sizes of the cover ports that stay free; 0 for any. */
  readonly freePortsM?: readonly number[];
  readonly impeller?: string;
  readonly materialCertificates?: boolean;
  readonly qualificationPapers?: boolean;

  readonly vesselsAtOnce: number;
  readonly arrangement?: 'alternate' | 'parallel';
}

export type ConditionName = keyof Conditions;

/** Only these conditions; what a rule has not declared it cannot read. */
export const pickConditions = <const N extends readonly ConditionName[]>(
  conditions: Conditions,
  names: N,
): Pick<Conditions, N[number]> =>
  Object.fromEntries(names.filter((n) => conditions[n] !== undefined).map((n) => [n, conditions[n]])) as Pick<
    Conditions,
    N[number]
  >;
