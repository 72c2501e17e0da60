import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { extentField } from '../geometry/geometry-fields.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { fromMemory } from '../source-reference.js';
import { openingAreas, openingPressureOf } from './opening-rule.js';
import { allowableStressField, length, permissiblePressureField, thicknessField } from './pressure-fields.js';

/**
 * Permissible pressure of a shell at an isolated opening, with the branch set in it as reinforcement.
 *
 *   P = (A_fs f + A_fb f_ob) / (A_ps + A_pb + 0.5 (A_fs + A_fb))
 *
 * @param innerRadiusM of the shell; the crown radius of a dished end [m]
 * @param branchOuterDiameterM of the branch, or of the hole where there is none [m]
 * @param branchThicknessM 0 for a plain hole [m]
 * @returns pressurePaGauge [Pa], weakening against the shell without opening [-]
 * @range diameter of the opening up to that of a cylinder, up to 0.6 of the diameter of a sphere; opening isolated,
 *   further from the next one and from an edge than the lengths that help
 * @error CALC_OUT_OF_RANGE outside the range
 * @source en-13445-3:2021 §9.5.2 (from memory, unverified)
 */
export const openingPressure = calculation({
  id: 'strength.openingPressure',
  title: 'Permissible pressure at an opening',
  inputs: z.strictObject({
    shape: z.enum(['cylinder', 'sphere']).meta({ description: 'Shell in which the opening lies' }),
    innerRadiusM: length('r', 'Inner radius of the shell'),
    thicknessM: thicknessField,
    branchOuterDiameterM: length('d_eb', 'Outer diameter of the branch, or diameter of the hole'),
    branchThicknessM: extentField('e_b', 'Wall of the branch, corroded; 0 for a plain hole'),
    branchLengthM: extentField(
      'l',
      'Length of the branch outside the shell; long enough unless given',
    ).optional(),
    allowableStressPa: allowableStressField,
    branchStressPa: allowableStressField
      .meta({ symbol: 'f_b', description: 'Allowable stress of the branch; f unless given' })
      .optional(),
  }),
  outputs: z.strictObject({
    pressurePaGauge: permissiblePressureField,
    weakening: quantity({
      unit: '1',
      symbol: 'v',
      description: 'Share of the pressure of the shell without opening',
    }),
  }),
  formula: String.raw`P = \frac{A_{fs} f + A_{fb} f_{ob}}{A_{ps} + A_{pb} + 0.5\,(A_{fs} + A_{fb})}`,
  range:
    'isolated opening; diameter up to that of a cylinder, up to 0.6 of that of a sphere; branch with a bore',
  source: [fromMemory('en-13445-3:2021 §9.5.2')],
  compute: (given, log) => {
    const {
      shape,
      innerRadiusM: r,
      thicknessM: e,
      branchOuterDiameterM: d_eb,
      branchThicknessM: e_b,
    } = given;
    const widest = (shape === 'cylinder' ? 2 : 1.2) * r;
    if (d_eb > widest) {
      return outOfRange({
        field: 'branchOuterDiameterM',
        given: d_eb,
        unit: 'm',
        allowed: `up to ${shown(widest)} m in this ${shape}`,
      });
    }
    if (e_b >= d_eb / 2) {
      return outOfRange({
        field: 'branchThicknessM',
        given: e_b,
        unit: 'm',
        allowed: `less than half of the outer diameter (${shown(d_eb / 2)} m)`,
      });
    }
    const f = given.allowableStressPa;
    const opening = {
      shape,
      innerRadius: r,
      thickness: e,
      outerDiameter: d_eb,
      branchThickness: e_b,
      branchLength: given.branchLengthM ?? Infinity,
      stress: f,
      branchStress: given.branchStressPa ?? f,
    };
    const pressurePaGauge = openingPressureOf(opening);
    const unopened = (shape === 'cylinder' ? f * e : 2 * f * e) / (r + e / 2);
    if (log !== undefined) {
      const areas = openingAreas(opening);
      const { shellMetal: A_fs, branchMetal: A_fb, shellPressure: A_ps, branchPressure: A_pb } = areas;
      log(
        formulaStep({
          symbol: 'l_s',
          formula: '√((2 · r + e) · e)',
          where: { r, e },
          value: areas.shellLength,
          unit: 'm',
        }),
      );
      log(
        formulaStep({
          symbol: 'l_b',
          formula: 'min(l, √((d_eb − e_b) · e_b))',
          where: { d_eb, e_b, ...(given.branchLengthM === undefined ? {} : { l: given.branchLengthM }) },
          value: areas.branchLength,
          unit: 'm',
        }),
      );
      log(
        formulaStep({
          symbol: 'P',
          formula: '(A_fs · f + A_fb · f_ob) / (A_ps + A_pb + 0.5 · (A_fs + A_fb))',
          where: { A_fs, A_fb, A_ps, A_pb, f, f_ob: Math.min(f, opening.branchStress) },
          value: pressurePaGauge,
          unit: 'Pa',
          note: 'EN 13445-3 9.5.2, from memory, unverified',
        }),
      );
    }
    // A strong branch may carry more than the shell; the opening never raises the shell.
    const least = Math.min(pressurePaGauge, unopened);
    return succeed({ pressurePaGauge: least, weakening: least / unopened });
  },
});
