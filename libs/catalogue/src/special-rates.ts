import type { SpecialRates } from './special-rate.js';
import rates from './data/special-rates.json' with { type: 'json' };

/** What special vessels cost in the demo range; reached with the price lists only. */
export const specialRates: SpecialRates = rates;
