import { z } from 'zod';
import { type Outcome, succeed } from '@flangewise/model';
import { calculation, quantity, type StepLog } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { endFormField, endProfile, torisphericalProportions } from '../geometry/end-form.js';
import { coneHalfAngleField, extentField, lengthField } from '../geometry/geometry-fields.js';
import { missingInput } from '../missing-input.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { commonPractice, fromMemory, published } from '../source-reference.js';
import { cylinderUnderExternalPressure } from './external-pressure-cylinder-en.js';
import { sphereUnderExternalPressure } from './external-pressure-dished.js';
import { elasticLimitField, elasticModulusField, safetyFactorField } from './external-pressure-fields.js';
import { explainCylinder, explainSphere } from './external-pressure-steps.js';

const inputs = z.strictObject({
  innerDiameterM: lengthField('D_i', 'Inner diameter, new'),
  cylinderLengthM: extentField('L_c', 'Length of the cylinder, from the end to the rim flange'),
  wallThicknessM: lengthField('e', 'Wall of the cylinder, new, less its tolerance'),
  form: endFormField,
  endThicknessM: lengthField('e_e', 'Wall of the end, new, less its tolerance'),
  coneHalfAngleDeg: coneHalfAngleField.optional(),
  elasticModulusPa: elasticModulusField,
  elasticLimitPa: elasticLimitField,
  corrosionAllowanceM: quantity(
    { unit: 'm', symbol: 'c', description: 'Corrosion allowance; 0 unless given' },
    z.number().min(0),
  ).optional(),
  safetyFactor: safetyFactorField.optional(),
  jacketPressurePaGauge: quantity(
    { unit: 'Pa', symbol: 'p_j', description: 'Highest pressure in the jacket (gauge); 0 unless given' },
    z.number().min(0),
  ).optional(),
  innerPressurePaAbs: quantity(
    {
      unit: 'Pa',
      symbol: 'p_i',
      description: 'Lowest pressure inside (absolute); 0, full vacuum, unless given',
    },
    z.number().min(0),
  ).optional(),
});

type Inputs = z.output<typeof inputs>;

const standardAtmosphere = 101_325;
/** Limit load of a simply supported plate, as for pressure from inside. */
const flatAttachment = 0.41;

interface Corroded {
  readonly innerDiameter: number;
  readonly wall: number;
  readonly endWall: number;
  readonly material: {
    readonly elasticModulus: number;
    readonly elasticLimit: number;
    readonly safetyFactor: number;
  };
}

const corroded = (given: Inputs): Corroded => {
  const { corrosionAllowanceM: c = 0 } = given;
  return {
    innerDiameter: given.innerDiameterM + 2 * c,
    wall: given.wallThicknessM - c,
    endWall: given.endThicknessM - c,
    material: {
      elasticModulus: given.elasticModulusPa,
      elasticLimit: given.elasticLimitPa,
      safetyFactor: given.safetyFactor ?? 1.5,
    },
  };
};

/** L = L_c + 0.4 h of a dished end; the rim flange and a flat or conical end are stiff. */
const unsupportedLength = (given: Inputs): number => {
  if (given.form === 'flat' || given.form === 'conical') return given.cylinderLengthM;
  const end = endProfile({
    form: given.form,
    diameter: given.innerDiameterM,
    nominalDiameter: given.innerDiameterM + 2 * given.endThicknessM,
    coneHalfAngleRad: 1,
  });
  return given.cylinderLengthM + 0.4 * end.height;
};

const shellLimit = (given: Inputs, state: Corroded, log?: StepLog): number => {
  const length = unsupportedLength(given);
  if (length === 0) return Infinity;
  const shell = {
    outerDiameter: state.innerDiameter + 2 * state.wall,
    thickness: state.wall,
    unsupportedLength: length,
    ...state.material,
  };
  if (log !== undefined) explainCylinder(shell, 'P_shell', log);
  return cylinderUnderExternalPressure(shell).allowable;
};

const endLimit = (
  given: Inputs,
  { innerDiameter, endWall, material }: Corroded,
  log?: StepLog,
): Outcome<number> => {
  const { form, corrosionAllowanceM: c = 0 } = given;
  const sphere = (radius: number): number => {
    const crown = { radius, thickness: endWall, ...material };
    if (log !== undefined) explainSphere(crown, 'P_end', log);
    return sphereUnderExternalPressure(crown).allowable;
  };
  switch (form) {
    case 'flat': {
      const ratio = Math.min(1, endWall / innerDiameter);
      const pressure = (material.elasticLimit / material.safetyFactor) * (ratio / flatAttachment) ** 2;
      log?.(
        formulaStep({
          symbol: 'P_end',
          formula: 'σ_e / S · (e / (C · D_i))²',
          where: {
            σ_e: material.elasticLimit,
            S: material.safetyFactor,
            e: ratio * innerDiameter,
            C: flatAttachment,
            D_i: innerDiameter,
          },
          value: pressure,
          unit: 'Pa',
          note: 'flat end as under pressure from inside',
        }),
      );
      return succeed(pressure);
    }
    case 'hemispherical':
      return succeed(sphere((innerDiameter + endWall) / 2));
    case '2:1 ellipsoidal':
      return succeed(sphere((innerDiameter + 2 * endWall) ** 2 / (4 * (innerDiameter / 4 + endWall))));
    case 'torispherical DIN 28011':
    case 'torispherical DIN 28013': {
      const outerDiameter = given.innerDiameterM + 2 * given.endThicknessM;
      return succeed(sphere(torisphericalProportions[form].crown * outerDiameter + c + endWall));
    }
    case 'conical': {
      if (given.coneHalfAngleDeg === undefined) {
        return missingInput('coneHalfAngleDeg', 'a conical end needs half of its opening angle, 10 to 75°');
      }
      const halfAngle = (given.coneHalfAngleDeg * Math.PI) / 180;
      const outerDiameter = innerDiameter / Math.cos(halfAngle) + 2 * endWall;
      const cone = {
        outerDiameter,
        thickness: endWall,
        unsupportedLength: innerDiameter / 2 / Math.sin(halfAngle),
        ...material,
      };
      if (log !== undefined) explainCylinder(cone, 'P_end', log);
      return succeed(cylinderUnderExternalPressure(cone).allowable);
    }
  }
};

/**
 * Allowable pressure from outside of a vessel's shell and end, against vacuum and jacket pressure together.
 *
 *   shell: EN 13445-3 8.5.2 over L = L_c + 0.4 h    dished end: as a sphere of its outer crown radius, 8.7, 8.8
 *   cone: as a cylinder of radius R/cos α and the cone's slant length    flat end: as under pressure from inside
 *   p_d = p_j + p_atm − p_i
 *
 * @returns allowablePressurePa, external over internal [Pa], each part's, demandPressurePa p_d, utilisation p_d/P
 * @range as the parts
 * @error CALC_OUT_OF_RANGE where the corrosion allowance leaves no wall; CALC_INVALID_INPUT for a cone without angle
 * @source en-13445-3:2021 §8.5.2, §8.7, §8.8 (table 8.5-5 from memory, unverified)
 */
export const vesselExternalRating = calculation({
  id: 'strength.vesselExternalRating',
  title: 'Allowable external pressure of a vessel',
  inputs,
  outputs: z.strictObject({
    allowablePressurePa: quantity({
      unit: 'Pa',
      symbol: 'P',
      description: 'Allowable external pressure over internal',
    }),
    limitingPart: z.enum(['shell', 'end']).meta({ description: 'The weaker part' }),
    shellPressurePa: quantity({
      unit: 'Pa',
      symbol: 'P_shell',
      description: 'Of the shell; absent without a cylinder',
    }).optional(),
    endPressurePa: quantity({ unit: 'Pa', symbol: 'P_end', description: 'Of the end' }),
    demandPressurePa: quantity({
      unit: 'Pa',
      symbol: 'p_d',
      description: 'Jacket pressure and vacuum together',
    }),
    utilisation: quantity({ unit: '1', symbol: 'u', description: 'Demand over allowable; met up to 1' }),
  }),
  formula: String.raw`P = \min(P_\mathrm{shell}, P_\mathrm{end}),\quad u = \frac{p_j + p_\mathrm{atm} - p_i}{P}`,
  range: 'walls above the corrosion allowance; circular within 0.5 % (shell) and 1 % (end)',
  source: [
    published('en-13445-3:2021 §8.8.3'),
    fromMemory('en-13445-3:2021 §8.5.2, §8.7, table 8.5-5'),
    commonPractice('cone as a cylinder of its radius of curvature'),
  ],
  compute: (given, log) => {
    const { corrosionAllowanceM: c = 0 } = given;
    for (const field of ['wallThicknessM', 'endThicknessM'] as const) {
      if (given[field] <= c) {
        return outOfRange({
          field,
          given: given[field],
          unit: 'm',
          allowed: `more than the corrosion allowance (${shown(c)} m)`,
        });
      }
    }
    const state = corroded(given);
    const shell = shellLimit(given, state, log);
    const end = endLimit(given, state, log);
    if (!end.ok) return end;
    const allowablePressurePa = Math.min(shell, end.value);
    const { jacketPressurePaGauge: p_j = 0, innerPressurePaAbs: p_i = 0 } = given;
    const demand = Math.max(0, p_j + standardAtmosphere - p_i);
    log?.(
      formulaStep({
        symbol: 'p_d',
        formula: 'max(0, p_j + 101325 − p_i)',
        where: { p_j, p_i },
        value: demand,
        unit: 'Pa',
        note: 'jacket pressure and vacuum act together',
      }),
    );
    return succeed({
      allowablePressurePa,
      limitingPart: shell <= end.value ? ('shell' as const) : ('end' as const),
      ...(Number.isFinite(shell) ? { shellPressurePa: shell } : {}),
      endPressurePa: end.value,
      demandPressurePa: demand,
      utilisation: demand / allowablePressurePa,
    });
  },
});
