import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { published } from '../source-reference.js';
import { closureLength, closurePressureField, force } from './closure-fields.js';
import { endForceOf } from './end-force.js';

/**
 * End force against the rated force of a clamp or segment closure.
 *
 *   H = π/4 G² P    u = H/F_r    P_max = F_r / (π/4 G²)
 *
 * @param sealDiameterM G, on which the seal lies [m]
 * @param ratedForceN   F_r, what the maker of the closure rates it for at the temperature [N]
 * @returns endForceN H, reserveN F_r − H [N], utilisation u [-], highestPressurePaGauge [Pa]
 * @range lengths and forces above zero
 * @error CALC_OUT_OF_RANGE from the schema
 * @source asme-viii-1 appendix 2-5
 */
export const ratedForce = calculation({
  id: 'closure.ratedForce',
  title: 'End force against the rated force of a closure',
  inputs: z.strictObject({
    sealDiameterM: closureLength('G', 'Diameter on which the seal lies'),
    pressurePaGauge: closurePressureField,
    ratedForceN: quantity(
      { unit: 'N', symbol: 'F_r', description: 'Rated end force of the closure' },
      z.number().positive(),
    ),
  }),
  outputs: z.strictObject({
    endForceN: force('H', 'End force'),
    reserveN: force('r', 'Rated force less end force'),
    utilisation: quantity({ unit: '1', symbol: 'u', description: 'End force over rated force; met up to 1' }),
    highestPressurePaGauge: quantity({
      unit: 'Pa',
      symbol: 'P_max',
      description: 'Pressure at the rated force',
    }),
  }),
  formula: String.raw`u = \frac{\tfrac{\pi}{4} G^2 P}{F_r}`,
  range: 'lengths and forces above zero; the rating is that of the maker, interlock not counted',
  source: [published('asme-viii-1 appendix 2-5')],
  compute: ({ sealDiameterM: G, pressurePaGauge: P, ratedForceN: F_r }, log) => {
    const endForceN = endForceOf(G, P);
    const utilisation = endForceN / F_r;
    const highestPressurePaGauge = F_r / endForceOf(G, 1);
    log?.(
      formulaStep({ symbol: 'H', formula: 'π / 4 · G² · P', where: { G, P }, value: endForceN, unit: 'N' }),
    );
    log?.(
      formulaStep({
        symbol: 'u',
        formula: 'H / F_r',
        where: { H: endForceN, F_r },
        value: utilisation,
        unit: '1',
      }),
    );
    log?.(
      formulaStep({
        symbol: 'P_max',
        formula: 'F_r / (π / 4 · G²)',
        where: { F_r, G },
        value: highestPressurePaGauge,
        unit: 'Pa',
      }),
    );
    return succeed({ endForceN, reserveN: F_r - endForceN, utilisation, highestPressurePaGauge });
  },
});
