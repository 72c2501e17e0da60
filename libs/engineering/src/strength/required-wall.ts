import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { lengthField } from '../geometry/geometry-fields.js';
import { cylinderRange, cylinderSources } from './cylinder-sources.js';
import { cylinderRules } from './cylinder-rules.js';
import { allowableStressField, codeField, jointEfficiencyField, pressureField } from './pressure-fields.js';
import { roundUpTo } from './round-up.js';
import { wallNeed } from './wall-calculation.js';
import { branchNote } from './wall-rule.js';

const allowance = (symbol: string, description: string): z.ZodNumber =>
  quantity({ unit: 'm', symbol, description }, z.number().min(0));

/**
 * Wall to order for a cylindrical vessel: required thickness in corroded state, corrosion allowance, tolerance of the
 * blank, rounded up.
 *
 *   e   = required thickness from D_i + 2 c, thin or thick method of the code
 *   e_n = e + c + δ, rounded up to the step
 *
 * @returns wallThicknessM e_n [m], requiredThicknessM e [m], outerDiameterM [m], method
 * @error CALC_OUT_OF_RANGE where the code's last formula ends
 * @source as strength.cylinderThickness
 */
export const requiredWall = calculation({
  id: 'strength.requiredWall',
  title: 'Wall of a special vessel',
  inputs: z.strictObject({
    code: codeField,
    innerDiameterM: lengthField('D_i', 'Inner diameter, new'),
    pressurePaGauge: pressureField,
    allowableStressPa: allowableStressField,
    jointEfficiency: jointEfficiencyField.optional(),
    corrosionAllowanceM: allowance('c', 'Corrosion allowance; 0 unless given').optional(),
    toleranceM: allowance('δ', 'Undersize tolerance of the blank; 0 unless given').optional(),
    thicknessStepM: quantity(
      { unit: 'm', symbol: 's', description: 'Step to which the wall is rounded up; 0.5 mm unless given' },
      z.number().positive(),
    ).optional(),
  }),
  outputs: z.strictObject({
    wallThicknessM: quantity({ unit: 'm', symbol: 'e_n', description: 'Wall to order' }),
    requiredThicknessM: quantity({ unit: 'm', symbol: 'e', description: 'Required in corroded state' }),
    outerDiameterM: quantity({ unit: 'm', symbol: 'D_e', description: 'Outer diameter' }),
    method: z.enum(['thin wall', 'thick wall']).meta({ description: 'Which formula holds' }),
  }),
  formula: String.raw`e_n = \left\lceil e + c + \delta \right\rceil_s`,
  range: cylinderRange,
  source: cylinderSources,
  compute: (given, log) => {
    const { pressurePaGauge: P, allowableStressPa: f, jointEfficiency: joint = 1 } = given;
    const { corrosionAllowanceM: c = 0, toleranceM: δ = 0, thicknessStepM: s = 0.0005 } = given;
    const innerDiameter = given.innerDiameterM + 2 * c;
    const needed = wallNeed(
      cylinderRules,
      { code: given.code, pressure: P, stress: f * joint },
      (k) => innerDiameter * k,
    );
    if (!needed.ok) return needed;
    const { value: k, branch } = needed.value;
    const requiredThicknessM = (innerDiameter * (k - 1)) / 2;
    const wallThicknessM = roundUpTo(requiredThicknessM + c + δ, s);
    log?.(
      formulaStep({
        symbol: 'e',
        formula: branch.thicknessFromInner,
        where: { P, f, z: joint, D_i: innerDiameter },
        value: requiredThicknessM,
        unit: 'm',
        note: branchNote(branch),
      }),
    );
    log?.(
      formulaStep({
        symbol: 'e_n',
        formula: 'e + c + δ, rounded up to s',
        where: { e: requiredThicknessM, c, δ, s },
        value: wallThicknessM,
        unit: 'm',
      }),
    );
    return succeed({
      wallThicknessM,
      requiredThicknessM,
      outerDiameterM: given.innerDiameterM + 2 * wallThicknessM,
      method: branch.method,
    });
  },
});
