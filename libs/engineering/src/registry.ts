import type { Calculation } from './calculation.js';
import { heatCalculations } from './heat/heat-calculations.js';
import { gasCalculations } from './gas/gas-calculations.js';
import { fluidCalculations } from './fluid/fluid-calculations.js';
import { conformityCalculations } from './conformity/conformity-calculations.js';
import { closureCalculations } from './closure/closure-calculations.js';
import { geometryCalculations } from './geometry/geometry-calculations.js';
import { couplingCalculations } from './coupling/coupling-calculations.js';
import { hazardousAreaCalculations } from './hazardous-area/hazardous-area-calculations.js';
import { liftingCalculations } from './lifting/lifting-calculations.js';
import { pedCalculations } from './ped/ped-calculations.js';
import { materialsCalculations } from './materials/materials-calculations.js';
import { specialCalculations } from './special/special-calculations.js';
import { strengthCalculations } from './strength/strength-calculations.js';
import { reliefCalculations } from './relief/relief-calculations.js';
import { utilitiesCalculations } from './utilities/utilities-calculations.js';
import { stirringCalculations } from './stirring/stirring-calculations.js';

/** Every public calculation. A repository test holds it against the files, the handbook and the reference cases. */
export const calculations: readonly Calculation[] = [
  ...heatCalculations,
  ...gasCalculations,
  ...fluidCalculations,
  ...closureCalculations,
  ...conformityCalculations,
  ...geometryCalculations,
  ...couplingCalculations,
  ...hazardousAreaCalculations,
  ...liftingCalculations,
  ...materialsCalculations,
  ...pedCalculations,
  ...specialCalculations,
  ...strengthCalculations,
  ...reliefCalculations,
  ...stirringCalculations,
  ...utilitiesCalculations,
];
