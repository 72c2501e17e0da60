import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { outOfRange } from '../out-of-range.js';
import { fromMemory, published } from '../source-reference.js';
import { shown } from '../shown.js';
import glass from './borosilicate-glass.json' with { type: 'json' };
import { length } from './pressure-fields.js';

const film = (symbol: string, description: string): z.ZodNumber =>
  quantity({ unit: 'W/(m2.K)', symbol, description }, z.number().positive());

/**
 * Allowable temperature difference between jacket and contents of a borosilicate glass vessel.
 *
 *   σ_T = α E ΔT_w / (2 (1 − ν))                         linear gradient ΔT_w across the wall, steady
 *   ΔT_w = ΔT (s/λ) / (1/h_1 + s/λ + 1/h_2)              share of the difference that the wall takes
 *   ΔT   = min(2 (1 − ν)(σ − σ_p)/(α E) / share, 120 K)
 *   ΔT_s = (1 − ν)(σ − σ_p)/(α E)                        sudden change at a surface held by the rest of the wall
 *
 * @param jacketCoefficientWPerM2K, contentCoefficientWPerM2K films; absent: the wall takes the whole difference
 * @param pressureStressPa σ_p, stress of the pressure, taken off the permissible stress [Pa]
 * @returns differenceK steady, suddenDifferenceK [K], limitedBy
 * @range σ_p below σ
 * @error CALC_OUT_OF_RANGE where the pressure uses up the permissible stress
 * @source iso-3585:1998 (properties); theory of plates, linear gradient; cap 120 K from memory, unverified. Whether
 *   the standard adds thermal and pressure stress was not read; adding them is the safe side
 */
export const glassThermalShock = calculation({
  id: 'strength.glassThermalShock',
  title: 'Allowable temperature difference of a glass vessel',
  inputs: z.strictObject({
    thicknessM: length('s', 'Wall thickness'),
    jacketCoefficientWPerM2K: film('h_1', 'Film coefficient of the jacket').optional(),
    contentCoefficientWPerM2K: film('h_2', 'Film coefficient of the contents').optional(),
    permissibleStressPa: quantity(
      { unit: 'Pa', symbol: 'σ', description: 'Permissible tensile stress; 7 N/mm² unless given' },
      z.number().positive().max(7e6),
    ).optional(),
    pressureStressPa: quantity(
      { unit: 'Pa', symbol: 'σ_p', description: 'Tensile stress of the pressure; 0 unless given' },
      z.number().min(0),
    ).optional(),
  }),
  outputs: z.strictObject({
    differenceK: quantity({ unit: 'K', symbol: 'ΔT', description: 'Allowable difference, steady' }),
    suddenDifferenceK: quantity({
      unit: 'K',
      symbol: 'ΔT_s',
      description: 'Allowable sudden change of a surface',
    }),
    wallShare: quantity({
      unit: '1',
      symbol: 'φ',
      description: 'Share of the difference that the wall takes',
    }),
    limitedBy: z.enum(['stress', 'cap']).meta({ description: 'What limits the difference' }),
  }),
  formula: String.raw`\Delta T = \frac{2(1-\nu)(\sigma-\sigma_p)}{\alpha E\,\varphi} \le 120\,\mathrm{K}`,
  range:
    'borosilicate glass 3.3; smooth wall away from edges; stress of the pressure below the permissible one',
  source: [
    published('iso-3585:1998'),
    published('en-1595'),
    published('timoshenko-theory-of-plates-2 §14'),
    fromMemory('120 K between jacket and contents'),
  ],
  compute: (inputs, log) => {
    const { thicknessM: s, pressureStressPa: σ_p = 0 } = inputs;
    const σ = inputs.permissibleStressPa ?? glass.permissibleStressPa.value;
    if (σ_p >= σ) {
      return outOfRange({
        field: 'pressureStressPa',
        given: σ_p,
        unit: 'Pa',
        allowed: `less than the permissible stress (${shown(σ)} Pa)`,
      });
    }
    const wall = s / glass.conductivityWPerMK.value;
    const resistance = (coefficient: number | undefined): number =>
      coefficient === undefined ? 0 : 1 / coefficient;
    const wallShare =
      wall /
      (resistance(inputs.jacketCoefficientWPerM2K) + wall + resistance(inputs.contentCoefficientWPerM2K));
    const [α, E, ν] = [glass.expansionPerK.value, glass.elasticModulusPa.value, glass.poisson.value];
    const suddenDifferenceK = ((1 - ν) * (σ - σ_p)) / (α * E);
    const byStress = (2 * suddenDifferenceK) / wallShare;
    const cap = glass.highestTemperatureDifferenceK.value;
    const differenceK = Math.min(byStress, cap);
    log?.({
      symbol: 'φ',
      formula: '(s / λ) / (1/h_1 + s / λ + 1/h_2)',
      substituted: `s / λ = ${shown(wall)} m²K/W`,
      value: wallShare,
      unit: '1',
      note: 'a film that is not given counts as none',
    });
    log?.(
      formulaStep({
        symbol: 'ΔT',
        formula: 'min(2 · (1 − ν) · (σ − σ_p) / (α · E · φ), ΔT_max)',
        where: { ν, σ, σ_p, α, E, φ: wallShare, ΔT_max: cap },
        value: differenceK,
        unit: 'K',
        note: 'cap from memory, unverified; adding pressure and thermal stress is the safe side',
      }),
    );
    log?.(
      formulaStep({
        symbol: 'ΔT_s',
        formula: '(1 − ν) · (σ − σ_p) / (α · E)',
        where: { ν, σ, σ_p, α, E },
        value: suddenDifferenceK,
        unit: 'K',
      }),
    );
    return succeed({
      differenceK,
      suddenDifferenceK: Math.min(suddenDifferenceK, differenceK),
      wallShare,
      limitedBy: byStress <= cap ? ('stress' as const) : ('cap' as const),
    });
  },
});
