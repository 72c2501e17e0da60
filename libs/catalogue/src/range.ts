import data from './data/range.json' with { type: 'json' };
import type { Family, Range } from './range-schema.js';

/** The maker's range: families and ends. A test holds it against its schema, so that loading it parses nothing. */
export const range: Range = data;

export const families: readonly Family[] = range.families;

/** Ends of the standard range in SI; past them a vessel is a special for engineering review, never a refusal. */
export const standardEnds = {
  maxPressurePaGauge: range.standardEnds.maxPressureBarGauge * 1e5,
  maxTemperatureK: range.standardEnds.maxTemperatureC + 273.15,
} as const;

/** Highest rating of the parts kept for special vessels [Pa gauge]. */
export const specialEndPaGauge = range.specialEnds.maxPressureBarGauge * 1e5;
