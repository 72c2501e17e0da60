import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { shown } from '../shown.js';
import { published } from '../source-reference.js';
import { distance, lengthField, mass } from './geometry-fields.js';

const position = (symbol: string, description: string) => quantity({ unit: 'm', symbol, description });

const part = z.strictObject({
  name: z.string().min(1).meta({ description: 'What the part is' }),
  massKg: quantity({ unit: 'kg', symbol: 'm_i', description: 'Mass of the part' }, z.number().min(0)),
  heightM: position('z_i', 'Height of the centre of the part above the floor'),
  xM: position('x_i', 'Centre of the part to the right of the middle of the frame').default(0),
  yM: position('y_i', 'Centre of the part in front of the middle of the frame').default(0),
});

/**
 * Centre of gravity of a whole from its parts, and the tilt at which it would fall over.
 *
 *   r_s = Σ m_i r_i / Σ m_i,  tan φ = (b − √(x² + y²)) / z
 *
 * @param parts          mass [kg] and place of the centre of each part [m]
 * @param supportRadiusM b, from the middle of the frame to its nearest tipping edge [m]
 * @returns massKg, heightM, xM, yM, eccentricityM; tippingAngleDeg where the support is given
 * @range some mass above zero; with a support, the centre above the floor
 * @error CALC_OUT_OF_RANGE without mass
 * @source beer-johnston-statics
 */
export const centreOfGravity = calculation({
  id: 'geometry.centreOfGravity',
  title: 'Centre of gravity of the whole',
  inputs: z.strictObject({
    parts: z.array(part).min(1).max(1000),
    supportRadiusM: lengthField(
      'b',
      'Distance from the middle of the frame to its nearest tipping edge',
    ).optional(),
  }),
  outputs: z.strictObject({
    massKg: mass('m', 'Mass of the whole'),
    heightM: distance('z_s', 'Height of the centre above the floor'),
    xM: distance('x_s', 'Centre to the right of the middle'),
    yM: distance('y_s', 'Centre in front of the middle'),
    eccentricityM: distance('a', 'Distance of the centre from the middle of the frame, seen from above'),
    tippingAngleDeg: quantity({
      unit: 'deg',
      symbol: 'φ',
      description: 'Tilt at which the whole falls over; negative: it falls by itself',
    }).optional(),
  }),
  formula: String.raw`\vec r_s = \frac{\sum m_i\,\vec r_i}{\sum m_i},\quad \tan\varphi = \frac{b - \sqrt{x_s^2 + y_s^2}}{z_s}`,
  range: 'some mass above zero; rigid parts, no sloshing; the tilt for a centre above the floor',
  source: [published('beer-johnston-statics ch. 5')],
  compute: ({ parts, supportRadiusM }, log) => {
    const massKg = parts.reduce((sum, { massKg: m }) => sum + m, 0);
    if (massKg === 0) {
      return {
        ok: false,
        error: {
          code: 'CALC_OUT_OF_RANGE',
          message: 'parts: no mass given; at least one part needs a mass above 0 kg',
          field: 'parts',
          allowed: 'at least one part with a mass above 0 kg',
        },
      };
    }
    const mean = (of: (item: (typeof parts)[number]) => number): number =>
      parts.reduce((sum, item) => sum + (item.massKg / massKg) * of(item), 0);
    const heightM = mean(({ heightM: z_i }) => z_i);
    const xM = mean(({ xM: x_i }) => x_i);
    const yM = mean(({ yM: y_i }) => y_i);
    const eccentricityM = Math.hypot(xM, yM);
    const axes = [
      ['z_s', heightM],
      ['x_s', xM],
      ['y_s', yM],
    ] as const;
    for (const [symbol, value] of axes) {
      log?.({
        symbol,
        formula: `Σ m_i ${symbol.charAt(0)}_i / Σ m_i`,
        substituted: `${String(parts.length)} parts, m = ${shown(massKg)} kg`,
        value,
        unit: 'm',
      });
    }
    const tippingAngleDeg =
      supportRadiusM === undefined || heightM <= 0
        ? undefined
        : (Math.atan2(supportRadiusM - eccentricityM, heightM) * 180) / Math.PI;
    if (tippingAngleDeg !== undefined) {
      log?.({
        symbol: 'φ',
        formula: 'atan((b − a) / z_s)',
        substituted: `atan((${shown(supportRadiusM ?? 0)} − ${shown(eccentricityM)}) / ${shown(heightM)})`,
        value: tippingAngleDeg,
        unit: 'deg',
      });
    }
    return succeed({
      massKg,
      heightM,
      xM,
      yM,
      eccentricityM,
      ...(tippingAngleDeg === undefined ? {} : { tippingAngleDeg }),
    });
  },
});
