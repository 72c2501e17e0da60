import { z } from 'zod';
import { type CalculationError, fail, type Outcome, succeed } from '@flangewise/model';
import { calculation, quantity, type StepLog } from '../calculation.js';
import { shown } from '../shown.js';
import { published } from '../source-reference.js';

interface Strengths {
  readonly proofStrength02Pa?: number | undefined;
  readonly proofStrength1Pa?: number | undefined;
  readonly tensileStrengthPa?: number | undefined;
  readonly elongationPercent?: number | undefined;
}

interface Rule {
  readonly formula: string;
  readonly substituted: string;
  readonly stressPa: number;
}

const needed = (
  field: keyof Strengths,
  why: string,
): { readonly ok: false; readonly error: CalculationError } =>
  fail({ code: 'CALC_MISSING_PROPERTY', message: `${field}: nothing given; ${why}`, field });

/** Austenitic steel with an elongation of 30 % and more (6.4), with the option of 35 % and more (6.5). */
const austeniticRule = ({
  proofStrength1Pa: rp1,
  tensileStrengthPa: rm,
  elongationPercent: a = 0,
}: Strengths): Outcome<Rule> => {
  if (rp1 === undefined) {
    return needed(
      'proofStrength1Pa',
      'the design stress of austenitic steel rests on Rp1.0 at the design temperature',
    );
  }
  const basic = rp1 / 1.5;
  if (a < 35 || rm === undefined) {
    return succeed({ formula: 'R_p1.0/1.5', substituted: `${shown(rp1)}/1.5`, stressPa: basic });
  }
  return succeed({
    formula: 'max(R_p1.0/1.5; min(R_p1.0/1.2; R_m/T/3))',
    substituted: `max(${shown(rp1)}/1.5; min(${shown(rp1)}/1.2; ${shown(rm)}/3))`,
    stressPa: Math.max(basic, Math.min(rp1 / 1.2, rm / 3)),
  });
};

/** Other steels, and austenitic steel below 30 % elongation (6.2). */
const generalRule = ({ proofStrength02Pa: rp02, tensileStrengthPa: rm }: Strengths): Outcome<Rule> => {
  if (rp02 === undefined)
    return needed('proofStrength02Pa', 'the rule takes Rp0.2 at the design temperature');
  if (rm === undefined) return needed('tensileStrengthPa', 'the rule takes the tensile strength at 20 °C');
  return succeed({
    formula: 'min(R_p0.2/1.5; R_m/20/2.4)',
    substituted: `min(${shown(rp02)}/1.5; ${shown(rm)}/2.4)`,
    stressPa: Math.min(rp02 / 1.5, rm / 2.4),
  });
};

/** Nominal design stress of EN 13445-3 clause 6 from strengths. Strengths in Pa at temperature, except R_m at 20 °C in 6.2. */
export const designStressOf = (
  steel: 'austenitic' | 'ferritic',
  strengths: Strengths,
  log?: StepLog,
): Outcome<number> => {
  const rule =
    steel === 'austenitic' && (strengths.elongationPercent ?? 0) >= 30
      ? austeniticRule(strengths)
      : generalRule(strengths);
  if (!rule.ok) return rule;
  log?.({
    symbol: 'f',
    formula: rule.value.formula,
    substituted: rule.value.substituted,
    value: rule.value.stressPa,
    unit: 'Pa',
  });
  return succeed(rule.value.stressPa);
};

const strength = (symbol: string, description: string) =>
  quantity({ unit: 'Pa', symbol, description }, z.number().positive().max(5e9));

/**
 * Nominal design stress f of a steel for normal operating load cases.
 *
 *   austenitic, A ≥ 35 %:  f = max(R_p1.0/T/1.5; min(R_p1.0/T/1.2; R_m/T/3))
 *   austenitic, A ≥ 30 %:  f = R_p1.0/T/1.5
 *   otherwise:             f = min(R_p0.2/T/1.5; R_m/20/2.4)
 *
 * @param steel             austenitic or ferritic (every other steel)
 * @param proofStrength1Pa  R_p1.0 at the design temperature [Pa]
 * @param proofStrength02Pa R_p0.2 at the design temperature [Pa]
 * @param tensileStrengthPa R_m at the design temperature (austenitic) or at 20 °C (others) [Pa]
 * @param elongationPercent A, minimum elongation after fracture [%]
 * @returns stressPa f [Pa]
 * @range below the creep range
 * @error CALC_MISSING_PROPERTY when the rule needs a strength that is not given
 * @source en-13445-3:2021 §6.2, §6.4, §6.5; 2014/68/EU annex I 7.1.2
 */
export const designStress = calculation({
  id: 'materials.designStress',
  title: 'Nominal design stress of a steel',
  inputs: z.strictObject({
    code: z.literal('EN 13445-3').meta({ description: 'Design code' }),
    steel: z
      .enum(['austenitic', 'ferritic'])
      .meta({ description: 'ferritic stands for every non-austenitic steel' }),
    proofStrength02Pa: strength('R_p0.2', 'Proof strength 0.2 % at the design temperature').optional(),
    proofStrength1Pa: strength('R_p1.0', 'Proof strength 1 % at the design temperature').optional(),
    tensileStrengthPa: strength(
      'R_m',
      'Tensile strength: at the design temperature for austenitic, at 20 °C for others',
    ).optional(),
    elongationPercent: quantity(
      { unit: '%', symbol: 'A', description: 'Minimum elongation after fracture' },
      z.number().min(0).max(100),
    ).optional(),
  }),
  outputs: z.strictObject({
    stressPa: quantity({ unit: 'Pa', symbol: 'f', description: 'Nominal design stress' }),
  }),
  formula: String.raw`f = \max\left(\frac{R_{p1.0/T}}{1.5},\ \min\left(\frac{R_{p1.0/T}}{1.2}, \frac{R_{m/T}}{3}\right)\right)`,
  range: 'below the creep range; austenitic rules from 30 % elongation, with R_m from 35 %',
  source: [published('en-13445-3:2021 §6'), published('2014/68/EU annex I 7.1.2')],
  compute: ({ steel, proofStrength02Pa, proofStrength1Pa, tensileStrengthPa, elongationPercent }, log) => {
    const stress = designStressOf(
      steel,
      { proofStrength02Pa, proofStrength1Pa, tensileStrengthPa, elongationPercent },
      log,
    );
    return stress.ok ? succeed({ stressPa: stress.value }) : stress;
  },
});
