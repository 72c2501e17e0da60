import { z } from 'zod';
import { type CalculationError, fail, type Outcome, succeed } from '@flangewise/model';
import { calculation, quantity, type StepLog } from '../calculation.js';
import { endFormField } from '../geometry/end-form.js';
import { coneHalfAngleField, extentField, lengthField } from '../geometry/geometry-fields.js';
import { formulaStep } from '../formula-step.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { fromMemory, published } from '../source-reference.js';
import { coverFields, coverOf } from './cover-fields.js';
import { cylinderRules } from './cylinder-rules.js';
import { cylinderSources } from './cylinder-sources.js';
import { endOpeningPressure } from './end-opening.js';
import { endRating } from './end-rating.js';
import { attachmentFactorField } from './flat-end-fields.js';
import { flatCoverPressureOf, openingFactor } from './flat-cover-rule.js';
import { flatEndSources } from './flat-end-rule.js';
import {
  allowableStressField,
  codeField,
  jointEfficiencyField,
  permissiblePressureField,
} from './pressure-fields.js';
import { sphereSources } from './sphere-rules.js';
import { torisphericalSources } from './torispherical-rules.js';
import { wallLoad } from './wall-calculation.js';
import { branchNote } from './wall-rule.js';

const inputs = z.strictObject({
  code: codeField,
  innerDiameterM: lengthField('D_i', 'Inner diameter, new'),
  wallThicknessM: lengthField('e', 'Wall of the cylinder, new, less its tolerance'),
  form: endFormField,
  endThicknessM: lengthField('e_e', 'Wall of the end, new, less its tolerance'),
  coneHalfAngleDeg: coneHalfAngleField.optional(),
  endAttachmentFactor: attachmentFactorField.optional(),
  endOpeningDiameterM: extentField(
    'd_eb',
    'Opening in the centre of the end: outer diameter of its branch, or of the hole; 0 unless given',
  ).optional(),
  endBranchThicknessM: extentField(
    'e_b',
    'Wall of that branch, new; 0, a plain hole, unless given',
  ).optional(),
  allowableStressPa: allowableStressField,
  jointEfficiency: jointEfficiencyField.optional(),
  corrosionAllowanceM: quantity(
    {
      unit: 'm',
      symbol: 'c',
      description: 'Corrosion allowance, taken off every wetted wall; 0 unless given',
    },
    z.number().min(0),
  ).optional(),
  ...coverFields,
});

const pressureOf = (part: 'shell' | 'end' | 'cover'): z.ZodNumber =>
  permissiblePressureField.meta({
    symbol: `P_${part}`,
    description: `Permissible pressure of the ${part} (gauge)`,
  });

export type VesselRatingInputs = z.output<typeof inputs>;

interface ShellRating {
  readonly pressure: number;
  readonly method: 'thin wall' | 'thick wall';
}

const shellRating = (given: VesselRatingInputs, log?: StepLog): Outcome<ShellRating> => {
  const { corrosionAllowanceM: c = 0, jointEfficiency = 1, allowableStressPa: f } = given;
  const innerDiameter = given.innerDiameterM + 2 * c;
  const e = given.wallThicknessM - c;
  const carried = wallLoad(
    cylinderRules,
    { code: given.code, innerDiameter, thickness: e },
    'wallThicknessM',
  );
  if (!carried.ok) return carried;
  const { value, branch } = carried.value;
  const pressure = value * f * jointEfficiency;
  log?.(
    formulaStep({
      symbol: 'P_shell',
      formula: branch.pressure,
      where: { f, z: jointEfficiency, e, D_i: innerDiameter },
      value: pressure,
      unit: 'Pa',
      note: branchNote(branch),
    }),
  );
  return succeed({ pressure, method: branch.method });
};

const ratedEnd = (given: VesselRatingInputs, log?: StepLog): Outcome<number> => {
  const rated = endRating(
    {
      code: given.code,
      form: given.form,
      innerDiameter: given.innerDiameterM,
      thickness: given.endThicknessM,
      cylinderThickness: given.wallThicknessM,
      corrosionAllowance: given.corrosionAllowanceM ?? 0,
      coneHalfAngleDeg: given.coneHalfAngleDeg,
      attachmentFactor: given.endAttachmentFactor,
      allowableStress: given.allowableStressPa,
      jointEfficiency: given.jointEfficiency ?? 1,
    },
    log,
  );
  if (!rated.ok) return rated;
  log?.({
    symbol: 'P_end',
    formula: `${given.form} end by ${given.code}`,
    substituted: `e = ${shown(given.endThicknessM - (given.corrosionAllowanceM ?? 0))} m, f = ${shown(given.allowableStressPa)} Pa`,
    value: rated.value,
    unit: 'Pa',
    note: 'without opening',
  });
  const opened = endOpeningPressure(given, rated.value);
  if (!opened.ok) return opened;
  if ((given.endOpeningDiameterM ?? 0) > 0) {
    log?.({
      symbol: 'P_opening',
      formula: given.form === 'flat' ? 'P_end (D_i − d_eb) / D_i' : 'pressure-area balance at the opening',
      substituted: `d_eb = ${shown(given.endOpeningDiameterM ?? 0)} m, e_b = ${shown(given.endBranchThicknessM ?? 0)} m`,
      value: opened.value,
      unit: 'Pa',
      note: 'EN 13445-3 9.5.2, 10.6 in every code; from memory, unverified',
    });
  }
  return succeed(Math.min(rated.value, opened.value));
};

/** The rule of an end speaks of `thicknessM`; here that field is `endThicknessM`. */
const asEndField = (error: CalculationError): CalculationError =>
  error.field === 'thicknessM'
    ? { ...error, field: 'endThicknessM', message: error.message.replace(/^thicknessM/, 'endThicknessM') }
    : error;

/** Undefined without a cover. */
const ratedCover = (given: VesselRatingInputs, log?: StepLog): Outcome<number | undefined> => {
  const cover = coverOf(given);
  if (!cover.ok || cover.value === undefined) return cover.ok ? succeed(undefined) : cover;
  const pressure = flatCoverPressureOf(cover.value);
  if (log !== undefined) {
    const { thickness: e, sealDiameter: G, loadDiameter: C_c, allowableStress: f_c, openings } = cover.value;
    const k_o = openingFactor(openings, G);
    log(
      formulaStep({
        symbol: 'P_cover',
        formula: 'f_c · e² · k_o / (0.309375 · G² + 0.75 · G · (C_c − G))',
        where: { f_c, e, k_o, G, C_c },
        value: pressure,
        unit: 'Pa',
        note: `EN 13445-3 10.5.2.1 in every code; k_o = ${shown(k_o)} for openings, 10.6; from memory, unverified`,
      }),
    );
  }
  return succeed(pressure);
};

/**
 * Maximum allowable pressure PS of a vessel at the temperature of the allowable stress: the least of shell, end
 * and flat cover, all corroded. The closure, the seal and the ports have limits of their own.
 *
 * @param code  formulas of shell and end; the cover is by EN 13445-3 clause 10 in every code
 * @param endOpeningDiameterM in the centre of the end, with its branch as reinforcement; none unless given [m]
 * @param endAttachmentFactor flat end, 0.41 (EN 13445-3, AD 2000) or 0.33 (ASME) unless given [-]
 * @returns pressurePaGauge [Pa], limitingPart, each part's pressure [Pa], shellMethod
 * @error CALC_OUT_OF_RANGE where the corrosion allowance leaves no wall or a code's formula ends;
 *   CALC_INVALID_INPUT where a part's input is absent
 * @source as the calculations of the parts
 */
export const vesselRating = calculation({
  id: 'strength.vesselRating',
  title: 'Permissible pressure of a vessel',
  inputs,
  outputs: z.strictObject({
    pressurePaGauge: permissiblePressureField.meta({
      symbol: 'PS',
      description: 'Permissible internal pressure of the vessel (gauge)',
    }),
    limitingPart: z.enum(['shell', 'end', 'cover']).meta({ description: 'The weakest part' }),
    shellPressurePaGauge: pressureOf('shell'),
    endPressurePaGauge: pressureOf('end'),
    coverPressurePaGauge: pressureOf('cover').optional(),
    shellMethod: z
      .enum(['thin wall', 'thick wall'])
      .meta({ description: 'Which formula holds for the shell' }),
  }),
  formula: String.raw`PS = \min(P_\mathrm{shell}, P_\mathrm{end}, P_\mathrm{cover})`,
  range:
    'as the parts: shell thin to e/De = 0.16 (EN 13445-3), thick above; torispherical end 0.001 to 0.08 De; cone to 60° (EN 13445-3) or 30° (ASME VIII-1); one opening, in the centre of the end',
  source: [
    ...cylinderSources,
    published('asme-viii-1 UG-32(f)'),
    ...torisphericalSources,
    ...sphereSources,
    ...flatEndSources,
    fromMemory('en-13445-3:2021 §7.6, §9.5.2, §10.5.2, §10.6'),
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
    const shell = shellRating(given, log);
    if (!shell.ok) return shell;
    const end = ratedEnd(given, log);
    if (!end.ok) return fail(asEndField(end.error));
    const cover = ratedCover(given, log);
    if (!cover.ok) return cover;
    const coverPressure = cover.value ?? Infinity;
    const pressurePaGauge = Math.min(shell.value.pressure, end.value, coverPressure);
    const limitingPart: 'shell' | 'end' | 'cover' =
      pressurePaGauge === shell.value.pressure ? 'shell' : pressurePaGauge === end.value ? 'end' : 'cover';
    log?.({
      symbol: 'PS',
      formula: 'min(P_shell, P_end, P_cover)',
      substituted: `min(${shown(shell.value.pressure)}, ${shown(end.value)}${cover.value === undefined ? '' : `, ${shown(cover.value)}`})`,
      value: pressurePaGauge,
      unit: 'Pa',
      note: `limited by the ${limitingPart}; closure, seal and ports not counted`,
    });
    return succeed({
      pressurePaGauge,
      limitingPart,
      shellPressurePaGauge: shell.value.pressure,
      endPressurePaGauge: end.value,
      ...(cover.value === undefined ? {} : { coverPressurePaGauge: cover.value }),
      shellMethod: shell.value.method,
    });
  },
});
