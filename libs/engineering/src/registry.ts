import type { Calculation } from './calculation.js';
import { strengthCalculations } from './strength/strength-calculations.js';

/** Every public calculation. A repository test holds it against the files, the handbook and the reference cases. */
export const calculations: readonly Calculation[] = [...strengthCalculations];
