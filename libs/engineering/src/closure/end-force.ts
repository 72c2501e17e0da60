import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { published } from '../source-reference.js';
import { closureLength, closurePressureField, force } from './closure-fields.js';

/** H = π/4 G² P. */
export const endForceOf = (sealDiameter: number, pressure: number): number =>
  (Math.PI / 4) * sealDiameter ** 2 * pressure;

/**
 * Force of the pressure on a cover.
 *
 *   H = π/4 G² P
 *
 * @param gasketDiameterM G, diameter on which the seal lies: load reaction of a gasket, O-ring centre [m]
 * @returns forceN H [N]
 * @range G > 0, P ≥ 0
 * @source asme-viii-1 appendix 2-5
 */
export const endForce = calculation({
  id: 'closure.endForce',
  title: 'End force on a cover',
  inputs: z.strictObject({
    gasketDiameterM: closureLength('G', 'Diameter of the gasket reaction or of the seal'),
    pressurePaGauge: closurePressureField,
  }),
  outputs: z.strictObject({ forceN: force('H', 'End force') }),
  formula: String.raw`H = \frac{\pi}{4} G^2 P`,
  range: 'G > 0, P ≥ 0',
  source: [published('asme-viii-1 appendix 2-5')],
  compute: ({ gasketDiameterM: G, pressurePaGauge: P }, log) => {
    const forceN = endForceOf(G, P);
    log?.(formulaStep({ symbol: 'H', formula: 'π / 4 · G² · P', where: { G, P }, value: forceN, unit: 'N' }));
    return succeed({ forceN });
  },
});
