import { z } from 'zod';
import { type Outcome, succeed } from '@flangewise/model';
import { calculation, quantity, type StepLog } from '../calculation.js';
import { missingInput } from '../missing-input.js';
import { outOfRange } from '../out-of-range.js';
import { fromMemory, published } from '../source-reference.js';
import { shown } from '../shown.js';
import { asmeExternalCylinder } from './external-pressure-cylinder-asme.js';
import { cylinderUnderExternalPressure } from './external-pressure-cylinder-en.js';
import { elasticLimitField, elasticModulusField, safetyFactorField } from './external-pressure-fields.js';
import { explainCylinder } from './external-pressure-steps.js';
import { length, thicknessField } from './pressure-fields.js';

const stress = (symbol: string, description: string): z.ZodNumber =>
  quantity({ unit: 'Pa', symbol, description }, z.number().positive());

const inputs = z.strictObject({
  code: z.enum(['ASME VIII-1', 'EN 13445-3']).meta({ description: 'Pressure vessel code' }),
  outerDiameterM: length('D_o', 'Outer diameter'),
  thicknessM: thicknessField,
  factorBPa: stress('B', 'ASME chart factor B at the temperature').optional(),
  externalStressPa: stress(
    'S_e',
    'ASME, needed for D_o/t < 10: the lesser of twice the allowable stress and 0.9 of the yield strength',
  ).optional(),
  unsupportedLengthM: length('L', 'EN 13445-3: length between stiff ends').optional(),
  elasticModulusPa: elasticModulusField.optional(),
  elasticLimitPa: elasticLimitField.optional(),
  safetyFactor: safetyFactorField.optional(),
});

const byEn13445 = (given: z.output<typeof inputs>, log?: StepLog): Outcome<number> => {
  const { unsupportedLengthM, elasticModulusPa, elasticLimitPa } = given;
  const needed = 'EN 13445-3 clause 8.5.2 needs it';
  if (unsupportedLengthM === undefined) return missingInput('unsupportedLengthM', needed);
  if (elasticModulusPa === undefined) return missingInput('elasticModulusPa', needed);
  if (elasticLimitPa === undefined) return missingInput('elasticLimitPa', needed);
  const shell = {
    outerDiameter: given.outerDiameterM,
    thickness: given.thicknessM,
    unsupportedLength: unsupportedLengthM,
    elasticModulus: elasticModulusPa,
    elasticLimit: elasticLimitPa,
    safetyFactor: given.safetyFactor ?? 1.5,
  };
  if (log !== undefined) explainCylinder(shell, 'P', log);
  return succeed(cylinderUnderExternalPressure(shell).allowable);
};

/**
 * Allowable external pressure of a cylinder.
 *
 *   ASME VIII-1: P_a = 4 B / (3 D_o/t), factor B given; UG-28(c)(2) below D_o/t = 10
 *   EN 13445-3:  P = P_r / S, from P_y = σ_e e / R and P_m = E e ε / R
 *
 * @returns pressurePa, external over internal [Pa]
 * @range 2 < D_o / t
 * @error CALC_OUT_OF_RANGE without a bore, CALC_INVALID_INPUT where an input of the code is absent
 * @source asme-viii-1 UG-28(c); en-13445-3:2021 §8.5.2
 */
export const externalPressureCylinder = calculation({
  id: 'strength.externalPressureCylinder',
  title: 'Allowable external pressure of a cylinder',
  inputs,
  outputs: z.strictObject({
    pressurePa: quantity({
      unit: 'Pa',
      symbol: 'P_a',
      description: 'Allowable external pressure over internal',
    }),
  }),
  formula: String.raw`P_a = \frac{4B}{3\,D_o/t} \quad\text{or}\quad P = \frac{P_r}{S},\ P_m = \frac{E e \varepsilon}{R}`,
  range: 'D_o / t above 2; EN 13445-3: circular within 0.5 %, safety factor 1.5 unless given',
  source: [
    published('asme-viii-1 UG-28(c)'),
    fromMemory('en-13445-3:2021 §8.5.2'),
    fromMemory('en-13445-3:2021 table 8.5-5'),
  ],
  compute: (given, log) => {
    if (given.thicknessM >= given.outerDiameterM / 2) {
      return outOfRange({
        field: 'thicknessM',
        given: given.thicknessM,
        unit: 'm',
        allowed: `less than half of outerDiameterM (${shown(given.outerDiameterM / 2)} m)`,
      });
    }
    if (given.code === 'ASME VIII-1' && given.factorBPa === undefined) {
      return missingInput(
        'factorBPa',
        'ASME VIII-1 UG-28 needs it: the chart factor B at the temperature [Pa]',
      );
    }
    const pressure =
      given.factorBPa !== undefined && given.code === 'ASME VIII-1'
        ? asmeExternalCylinder(
            {
              outerDiameter: given.outerDiameterM,
              thickness: given.thicknessM,
              factorB: given.factorBPa,
              stress: given.externalStressPa,
            },
            log,
          )
        : byEn13445(given, log);
    return pressure.ok ? succeed({ pressurePa: pressure.value }) : pressure;
  },
});
