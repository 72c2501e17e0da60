import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { fromMemory, published } from '../source-reference.js';

const measure = (symbol: string, description: string): z.ZodNumber =>
  quantity({ unit: 'm', symbol, description }, z.number().positive());

/**
 * Eddy-current loss in the metal can of a magnetic coupling: an upper bound for a sinusoidal field, end rings
 * neglected. Cans of polymer or ceramic have none.
 *
 *   P = π D L t (π D N B)² / (2 ρ_e)
 *
 * @param speedPerS       N [1/s]
 * @param resistivityOhmM ρ_e of the can at its temperature [Ω·m]
 * @returns powerW, heat into the can and torque lost to it [W]
 * @range t well below D and below the skin depth
 * @source derived from E = v B; proportionalities as in the magnetic drive pump chapter of a pump handbook
 */
export const canEddyLoss = calculation({
  id: 'coupling.canEddyLoss',
  title: 'Eddy-current loss in the can of a magnetic coupling',
  inputs: z.strictObject({
    canThicknessM: measure('t', 'Thickness of the can'),
    canDiameterM: measure('D', 'Mean diameter of the can'),
    activeLengthM: measure('L', 'Length of the magnets along the shaft'),
    peakFluxDensityT: quantity(
      { unit: 'T', symbol: 'B', description: 'Peak flux density in the can' },
      z.number().min(0).max(3),
    ),
    speedPerS: quantity({ unit: '1/s', symbol: 'N', description: 'Speed' }, z.number().min(0).max(1000)),
    resistivityOhmM: quantity(
      { unit: 'Ohm.m', symbol: 'ρ_e', description: 'Electrical resistivity of the can' },
      z.number().min(1e-9),
    ),
  }),
  outputs: z.strictObject({ powerW: quantity({ unit: 'W', symbol: 'P', description: 'Eddy-current loss' }) }),
  formula: String.raw`P = \frac{\pi D L t\,(\pi D N B)^2}{2\rho_e}`,
  range: 'can thin against its diameter; sinusoidal field; end rings neglected (upper bound)',
  source: [
    published('pump-handbook magnetic drive pumps'),
    fromMemory('exponents of speed and flux density, and the closed form from E = v B'),
  ],
  compute: (inputs, log) => {
    const { canThicknessM: t, canDiameterM: D, activeLengthM: L, peakFluxDensityT: B, speedPerS: N } = inputs;
    const powerW = (Math.PI * D * L * t * (Math.PI * D * N * B) ** 2) / (2 * inputs.resistivityOhmM);
    log?.(
      formulaStep({
        symbol: 'P',
        formula: 'π · D · L · t · (π · D · N · B)² / (2 · ρ_e)',
        where: { D, L, t, N, B, ρ_e: inputs.resistivityOhmM },
        value: powerW,
        unit: 'W',
        note: 'upper bound',
      }),
    );
    return succeed({ powerW });
  },
});
