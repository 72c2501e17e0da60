import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { missingInput } from '../missing-input.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';
import { endFormField, endProfile } from './end-form.js';
import { area, coneHalfAngleField, distance, lengthField } from './geometry-fields.js';

/**
 * Volume, depth and surface of a vessel end without straight flange, all on the diameter given.
 *
 *   torispherical: crown and knuckle of DIN 28011 (R = D, r = 0.1 D) or DIN 28013 (R = 0.8 D, r = 0.154 D)
 *   2:1 ellipsoidal: V = π D³/24, h = D/4    hemispherical: V = π D³/12, h = D/2
 *
 * @param diameterM D, of the surface that is meant: the inner one for the contents [m]
 * @returns volumeL [L], heightM above the lowest point [m], areaM2 [m²]
 * @range D > 0
 * @error CALC_INVALID_INPUT for a cone without its angle
 * @source din-28011:2012, din-28013:2012 (radii); geometry of solids of revolution
 */
export const dishedEnd = calculation({
  id: 'geometry.dishedEnd',
  title: 'Volume and depth of a vessel end',
  inputs: z.strictObject({
    form: endFormField,
    diameterM: lengthField('D', 'Diameter of the surface'),
    coneHalfAngleDeg: coneHalfAngleField.optional(),
  }),
  outputs: z.strictObject({
    volumeL: quantity({ unit: 'L', symbol: 'V', description: 'Volume up to the tangent line' }),
    heightM: distance('h', 'Depth from the tangent line'),
    areaM2: area('A', 'Surface up to the tangent line'),
  }),
  formula: String.raw`V = \int_0^h \pi\,x(z)^2\,dz`,
  range: 'diameter above zero; no straight flange',
  source: [published('din-28011:2012'), published('din-28013:2012')],
  compute: ({ form, diameterM: D, coneHalfAngleDeg }, log) => {
    if (form === 'conical' && coneHalfAngleDeg === undefined) {
      return missingInput('coneHalfAngleDeg', 'a conical end needs half of its opening angle, 10 to 75°');
    }
    const end = endProfile({
      form,
      diameter: D,
      nominalDiameter: D,
      coneHalfAngleRad: ((coneHalfAngleDeg ?? 45) * Math.PI) / 180,
    });
    const volumeL = end.volume * 1000;
    log?.({
      symbol: 'V',
      formula: '1000 ∫ π x(z)² dz, z = 0 … h',
      substituted: `${form}, D = ${shown(D)} m, h = ${shown(end.height)} m`,
      value: volumeL,
      unit: 'L',
    });
    return succeed({ volumeL, heightM: end.height, areaM2: end.area });
  },
});
