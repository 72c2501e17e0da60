import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { fromMemory } from '../source-reference.js';
import { heatFields } from './heat-fields.js';

/** Film of a surface in a room, convection and radiation: h = 9.4 + 0.052 ΔT [W/(m²·K)]. */
const film = { base: 9.4, slope: 0.052 } as const;

/** The film is meant for surfaces up to this much above the room. */
const maxBareDifferenceK = 400;

/**
 * Heat loss of a hot surface to a room, bare or insulated, and the temperature of the outer surface.
 *
 *   q = h ΔT_s = (T − T_s) λ/s,  h = 9.4 + 0.052 ΔT_s,  ΔT_s = T_s − T_a
 *
 * @param surfaceAreaM2 outer area [m²]
 * @param innerTemperatureK T, of the wall under the insulation [K]
 * @param ambientTemperatureK T_a ≤ T, default 293.15 [K]
 * @param insulationThicknessM s, insulationConductivityWPerMK λ; absent: bare
 * @returns lossW [W], lossWPerK, mean per kelvin [W/K], surfaceTemperatureK T_s [K]
 * @range still air in a room, T_s up to 400 K above it, plane insulation (thin against the diameter)
 * @error CALC_OUT_OF_RANGE outside the range
 * @source film of surfaces in rooms as used for insulation, from memory, unverified
 */
export const ambientLoss = calculation({
  id: 'heat.ambientLoss',
  title: 'Heat loss to the room and surface temperature',
  inputs: z.strictObject({
    surfaceAreaM2: heatFields.positive('m2', 'A', 'Outer surface'),
    innerTemperatureK: heatFields.positive('K', 'T', 'Temperature of the wall under the insulation'),
    ambientTemperatureK: heatFields.positive('K', 'T_a', 'Temperature of the room').default(293.15),
    insulationThicknessM: heatFields.positive('m', 's', 'Thickness of the insulation').optional(),
    insulationConductivityWPerMK: heatFields
      .positive(
        'W/(m.K)',
        'λ',
        'Thermal conductivity of the insulation; 0.045 for mineral wool where nothing is given',
      )
      .default(0.045),
  }),
  outputs: z.strictObject({
    lossW: quantity({ unit: 'W', symbol: 'Q', description: 'Heat loss' }),
    lossWPerK: quantity({ unit: 'W/K', symbol: 'G', description: 'Heat loss per kelvin above the room' }),
    surfaceTemperatureK: quantity({
      unit: 'K',
      symbol: 'T_s',
      description: 'Temperature of the outer surface',
    }),
  }),
  formula: String.raw`q = (9.4 + 0.052\,\Delta T_s)\,\Delta T_s = \frac{\lambda}{s}(T - T_s)`,
  range: 'still air in a room, surface up to 400 K above it, plane insulation',
  source: [fromMemory('film of surfaces in rooms, h = 9.4 + 0.052 ΔT (insulation practice)')],
  compute: (inputs, log) => {
    const { surfaceAreaM2, innerTemperatureK, ambientTemperatureK, insulationThicknessM } = inputs;
    const difference = innerTemperatureK - ambientTemperatureK;
    if (difference < 0) {
      return outOfRange({
        field: 'innerTemperatureK',
        given: innerTemperatureK,
        unit: 'K',
        allowed: `at least ambientTemperatureK (${shown(ambientTemperatureK)} K); a cold wall takes heat up and collects condensate`,
      });
    }
    const conductance =
      insulationThicknessM === undefined
        ? Infinity
        : inputs.insulationConductivityWPerMK / insulationThicknessM;
    const linear = film.base + conductance;
    const surface =
      insulationThicknessM === undefined
        ? difference
        : (2 * conductance * difference) /
          (linear + Math.sqrt(linear ** 2 + 4 * film.slope * conductance * difference));
    if (surface > maxBareDifferenceK) {
      return outOfRange({
        field: 'innerTemperatureK',
        given: innerTemperatureK,
        unit: 'K',
        allowed: `a surface up to ${String(maxBareDifferenceK)} K above the room`,
      });
    }
    const lossW = surfaceAreaM2 * (film.base + film.slope * surface) * surface;
    log?.({
      symbol: 'T_s',
      formula: 'T_a + ΔT_s, (9.4 + 0.052 ΔT_s) ΔT_s = (λ/s)(T − T_a − ΔT_s)',
      substituted: `T = ${shown(innerTemperatureK)} K, T_a = ${shown(ambientTemperatureK)} K, ${insulationThicknessM === undefined ? 'bare' : `λ/s = ${shown(conductance)} W/(m²·K)`}`,
      value: ambientTemperatureK + surface,
      unit: 'K',
      note: 'film coefficient from memory, unverified',
    });
    log?.({
      symbol: 'Q',
      formula: 'A (9.4 + 0.052 ΔT_s) ΔT_s',
      substituted: `${shown(surfaceAreaM2)} × (9.4 + 0.052 × ${shown(surface)}) × ${shown(surface)}`,
      value: lossW,
      unit: 'W',
    });
    return succeed({
      lossW,
      lossWPerK: difference === 0 ? surfaceAreaM2 * film.base : lossW / difference,
      surfaceTemperatureK: ambientTemperatureK + surface,
    });
  },
});
