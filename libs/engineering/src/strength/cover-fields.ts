import { z } from 'zod';
import { type Outcome, succeed } from '@flangewise/model';
import { quantity } from '../calculation.js';
import { lengthField, extentField } from '../geometry/geometry-fields.js';
import { missingInput } from '../missing-input.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { type CoverOpenings, type FlatCover, openingFactor } from './flat-cover-rule.js';
import { allowableStressField } from './pressure-fields.js';

/** Openings of a cover: none unless given. */
export const openingFields = {
  coverCentralOpeningM: extentField('d_0', 'Opening in the centre of the cover').optional(),
  coverPortDiameterM: extentField('d_p', 'Largest port of the cover').optional(),
  coverPortCount: quantity(
    { unit: '1', symbol: 'n', description: 'Number of ports on the pitch circle' },
    z.number().int().min(0).max(100),
  ).optional(),
  coverPortCircleM: lengthField('D_p', 'Pitch circle of the ports').optional(),
};

/** The cover of a vessel; absent where no thickness is given. */
export const coverFields = {
  coverThicknessM: lengthField('e_c', 'Thickness of the flat cover, less its tolerance').optional(),
  coverSealDiameterM: lengthField(
    'G',
    'Diameter on which the seal lies; the inner diameter unless given',
  ).optional(),
  coverLoadDiameterM: lengthField(
    'C_c',
    'Circle of bolts, clamp or segments; the seal diameter unless given',
  ).optional(),
  coverAllowableStressPa: allowableStressField
    .meta({ symbol: 'f_c', description: 'Allowable stress of the cover; f unless given' })
    .optional(),
  ...openingFields,
};

type OpeningInputs = z.output<z.ZodObject<typeof openingFields>>;

/** The openings, checked: they must leave material between them. */
export const openingsOf = (given: OpeningInputs, sealDiameter: number): Outcome<CoverOpenings> => {
  const portCount = given.coverPortCount ?? 0;
  const port = given.coverPortDiameterM ?? 0;
  if (portCount > 0 && port > 0 && given.coverPortCircleM === undefined) {
    return missingInput('coverPortCircleM', 'ports need their pitch circle [m]');
  }
  const openings = {
    central: given.coverCentralOpeningM ?? 0,
    port,
    portCount,
    portCircle: given.coverPortCircleM ?? 0,
  };
  if (openings.portCircle >= sealDiameter && port > 0 && portCount > 0) {
    return outOfRange({
      field: 'coverPortCircleM',
      given: openings.portCircle,
      unit: 'm',
      allowed: `less than the seal diameter (${shown(sealDiameter)} m)`,
    });
  }
  const factor = openingFactor(openings, sealDiameter);
  return factor > 0
    ? succeed(openings)
    : outOfRange({
        field: openings.port > 0 ? 'coverPortDiameterM' : 'coverCentralOpeningM',
        given: openings.port > 0 ? openings.port : openings.central,
        unit: 'm',
        allowed:
          'openings that leave material between each other and to the seal; take fewer or smaller ones',
      });
};

type CoverInputs = z.output<z.ZodObject<typeof coverFields>> & {
  readonly innerDiameterM: number;
  readonly allowableStressPa: number;
  readonly corrosionAllowanceM?: number | undefined;
};

/** The cover, corroded; undefined where the vessel has none. */
export const coverOf = (given: CoverInputs): Outcome<FlatCover | undefined> => {
  const { coverThicknessM, corrosionAllowanceM: c = 0 } = given;
  if (coverThicknessM === undefined) return succeed(undefined);
  const sealDiameter = given.coverSealDiameterM ?? given.innerDiameterM;
  const loadDiameter = given.coverLoadDiameterM ?? sealDiameter;
  if (coverThicknessM <= c) {
    return outOfRange({
      field: 'coverThicknessM',
      given: coverThicknessM,
      unit: 'm',
      allowed: `more than the corrosion allowance (${shown(c)} m)`,
    });
  }
  if (sealDiameter < given.innerDiameterM) {
    return outOfRange({
      field: 'coverSealDiameterM',
      given: sealDiameter,
      unit: 'm',
      allowed: `at least the inner diameter (${shown(given.innerDiameterM)} m)`,
    });
  }
  if (loadDiameter < sealDiameter) {
    return outOfRange({
      field: 'coverLoadDiameterM',
      given: loadDiameter,
      unit: 'm',
      allowed: `at least the seal diameter (${shown(sealDiameter)} m)`,
    });
  }
  const openings = openingsOf(given, sealDiameter);
  if (!openings.ok) return openings;
  return succeed({
    thickness: coverThicknessM - c,
    sealDiameter,
    loadDiameter,
    gasketWidth: 0,
    gasketFactor: 0,
    allowableStress: given.coverAllowableStressPa ?? given.allowableStressPa,
    openings: openings.value,
  });
};
