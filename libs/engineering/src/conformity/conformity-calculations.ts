import type { Calculation } from '../calculation.js';
import { directives } from './directives.js';
import { documents } from './documents.js';
import { greatBritain } from './great-britain.js';
import { unitedStates } from './united-states.js';

/** Law of the site: statements to be checked against the text in force, never certificates. */
export const conformityCalculations: readonly Calculation[] = [
  directives,
  documents,
  greatBritain,
  unitedStates,
];
