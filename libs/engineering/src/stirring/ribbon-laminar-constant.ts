import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { type FormulaStep, formulaStep } from '../formula-step.js';
import { outOfRange } from '../out-of-range.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';
import { impellerDiameterM, vesselDiameterM } from './stirring-fields.js';

export interface Ribbon {
  readonly impellerDiameterM: number;
  readonly vesselDiameterM: number;
  readonly impellerHeightM: number;
  readonly pitchM: number;
  readonly bladeWidthM: number;
  readonly bladeCount: number;
}

/** K_L of a helical ribbon, without check of its range. */
export const ribbonLaminarConstantOf = (ribbon: Ribbon): number => {
  const d = ribbon.impellerDiameterM;
  const clearance = (ribbon.vesselDiameterM - d) / 2;
  return (
    82.8 *
    (ribbon.impellerHeightM / d) *
    (clearance / d) ** -0.38 *
    (ribbon.pitchM / d) ** -0.35 *
    (ribbon.bladeWidthM / d) ** 0.2 *
    ribbon.bladeCount ** 0.78
  );
};

/** How K_L comes about. */
export const ribbonStep = (ribbon: Ribbon): FormulaStep => ({
  symbol: 'K_L',
  formula: '82.8 · h / D · ((T − D) / (2 · D)) ^ (−0.38) · (p / D) ^ (−0.35) · (w / D) ^ 0.2 · n ^ 0.78',
  where: {
    h: ribbon.impellerHeightM,
    D: ribbon.impellerDiameterM,
    T: ribbon.vesselDiameterM,
    p: ribbon.pitchM,
    w: ribbon.bladeWidthM,
    n: ribbon.bladeCount,
  },
  value: ribbonLaminarConstantOf(ribbon),
  unit: '1',
  note: 'Rieger and others 1988',
});

const length = (symbol: string, description: string): z.ZodNumber =>
  quantity({ unit: 'm', symbol, description }, z.number().positive());

/**
 * Laminar constant of a helical ribbon (Rieger and others).
 *
 *   K_L = 82.8 (h/D) (c/D)^(−0.38) (p/D)^(−0.35) (w/D)^0.20 n^0.78,  c = (T − D)/2
 *
 * @param impellerDiameterM D [m]
 * @param impellerHeightM   h [m]
 * @param bladeCount        n, 1 or 2 ribbons [-]
 * @param pitchM            p of one ribbon [m]
 * @param bladeWidthM       w [m]
 * @param vesselDiameterM   T [m]
 * @returns laminarConstant K_L [-]
 * @range D < T, n 1 to 4; laminar
 * @error CALC_OUT_OF_RANGE outside the range
 * @source rieger-1988; handbook-industrial-mixing example 9-6 (as quoted in fluids-1.3.1 mixing)
 */
export const ribbonLaminarConstant = calculation({
  id: 'stirring.ribbonLaminarConstant',
  title: 'Laminar constant of a helical ribbon',
  inputs: z.strictObject({
    impellerDiameterM,
    impellerHeightM: length('h', 'Height of the ribbon'),
    bladeCount: quantity(
      { unit: '1', symbol: 'n', description: 'Number of ribbons' },
      z.number().int().min(1).max(4),
    ),
    pitchM: length('p', 'Pitch of one ribbon'),
    bladeWidthM: length('w', 'Width of the ribbon'),
    vesselDiameterM,
  }),
  outputs: z.strictObject({
    laminarConstant: quantity({ unit: '1', symbol: 'K_L', description: 'Np · Re in laminar flow' }),
  }),
  formula: String.raw`K_L = 82.8\,\frac{h}{D}\left(\frac{c}{D}\right)^{-0.38}\left(\frac{p}{D}\right)^{-0.35}\left(\frac{w}{D}\right)^{0.20} n^{0.78},\quad c = \frac{T - D}{2}`,
  range: 'D < T, laminar flow (Re < 10)',
  source: [
    published('rieger-1988'),
    published('handbook-industrial-mixing example 9-6'),
    published('fluids-1.3.1 mixing'),
  ],
  compute: (ribbon, log) => {
    const { impellerDiameterM: d, vesselDiameterM: t } = ribbon;
    if (d >= t) {
      return outOfRange({ field: 'impellerDiameterM', given: d, unit: 'm', allowed: `below ${shown(t)} m` });
    }
    const laminarConstant = ribbonLaminarConstantOf(ribbon);
    log?.(formulaStep(ribbonStep(ribbon)));
    return succeed({ laminarConstant });
  },
});
