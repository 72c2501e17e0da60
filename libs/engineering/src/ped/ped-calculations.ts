import type { Calculation } from '../calculation.js';
import { assembly } from './assembly.js';
import { fluidGroup } from './fluid-group.js';
import { fluidGroupOfHazardClass } from './fluid-group-of-hazard-class.js';
import { fluidState } from './fluid-state.js';
import { testPressure } from './test-pressure.js';
import { vesselAssessment } from './vessel-assessment.js';
import { vesselCategory } from './vessel-category.js';

/** Classification under the Pressure Equipment Directive. */
export const pedCalculations: readonly Calculation[] = [
  assembly,
  fluidGroup,
  fluidGroupOfHazardClass,
  fluidState,
  testPressure,
  vesselAssessment,
  vesselCategory,
];
