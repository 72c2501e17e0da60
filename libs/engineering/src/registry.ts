import type { Calculation } from './calculation.js';
import { thickWallStress } from './strength/thick-wall-stress.js';

/** Every public calculation. A repository test holds it against the files, the handbook and the reference cases. */
export const calculations: readonly Calculation[] = [thickWallStress];
