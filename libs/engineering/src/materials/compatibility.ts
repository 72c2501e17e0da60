import { z } from 'zod';
import { type Basis, fail, type Outcome, succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { shown } from '../shown.js';
import { commonPractice, fromMemory, published } from '../source-reference.js';
import { basisSchema, weakestBasis } from './basis.js';
import {
  type CorrosionField,
  corrosionFieldNames,
  corrosionFields,
  corrosionRulesOf,
  type CorrosionState,
  type CorrosionVerdict,
  ruleApplies,
} from './corrosion-rule.js';
import { materialGrade, type MaterialGrade } from './material-grade.js';
import { type Medium, mediumOf } from './medium.js';

/** A wetted part in a medium. Only material, medium and temperature are always needed. */
export interface Exposure extends Readonly<Partial<Record<CorrosionField, number | undefined>>> {
  readonly material: string;
  readonly medium: string;
  readonly temperatureK: number;
  readonly dry?: boolean | undefined;
  readonly moist?: boolean | undefined;
}

export interface CompatibilityReason {
  readonly verdict: CorrosionVerdict;
  readonly text: string;
  readonly source: string;
  readonly basis: Basis;
}

export interface Compatibility {
  readonly verdict: CorrosionVerdict;
  /** The rows that led to the verdict, worst first. */
  readonly reasons: readonly CompatibilityReason[];
  /** The weakest of the rows that decide. */
  readonly basis: Basis;
  /** Inputs that are not stated and could make the verdict worse. */
  readonly missingInputs: readonly CorrosionField[];
}

const severity: Readonly<Record<CorrosionVerdict, number>> = { suitable: 0, caution: 1, forbidden: 2 };

const stateOf = (exposure: Exposure, medium: Medium): CorrosionState => {
  const { dry, moist } = exposure;
  const { implies } = medium;
  const isDry = implies?.dry === true || (implies?.moist !== true && (dry === true || moist === false));
  const isMoist = !isDry && (implies?.moist === true || moist === true || dry === false);
  const stated = corrosionFields.flatMap((field) => {
    const value = exposure[field];
    return value === undefined ? [] : [[field, value] as const];
  });
  return {
    ...(isDry ? { waterPercent: 0 } : {}),
    ...Object.fromEntries(stated),
    temperatureC: exposure.temperatureK - 273.15,
    moist: isMoist,
  };
};

/** Seals, glass and polymers have limits of temperature whatever the medium. */
const serviceReason = (
  { service, key }: MaterialGrade,
  temperatureC: number,
): CompatibilityReason | undefined => {
  if (service?.maxC === undefined) return undefined;
  const { minC, maxC, peakC = maxC, source, basis } = service;
  // A hundredth of a kelvin of rounding belongs to the limit.
  if (temperatureC < minC - 0.01) {
    return { verdict: 'forbidden', text: `${key} is not for service below ${shown(minC)} °C`, source, basis };
  }
  if (temperatureC <= maxC + 0.01) return undefined;
  return temperatureC < peakC - 0.01
    ? {
        verdict: 'caution',
        text: `${key} stands ${shown(maxC)} °C lasting, ${shown(peakC)} °C for short`,
        source,
        basis,
      }
    : {
        verdict: 'forbidden',
        text: `${key} is not for service at ${shown(peakC)} °C and above`,
        source,
        basis,
      };
};

const undecided = (grade: MaterialGrade, medium: Medium, open: readonly CorrosionField[]): Outcome<never> =>
  fail({
    code: 'CALC_MISSING_PROPERTY',
    message:
      open.length > 0
        ? `${open.join(', ')}: not given; whether ${grade.key} stands ${medium.key} at this temperature depends on it`
        : `no corrosion row is on file for ${grade.key} in ${medium.key} at this state; enter a tested verdict with its source`,
    field: open[0] ?? 'medium',
  });

/**
 * Verdict on a wetted part in one medium: the worst of all rows that apply. A row that would be worse and depends on
 * an input that is not stated turns `suitable` into `caution` and names the input. Where nothing decides, the answer
 * is CALC_MISSING_PROPERTY naming the pair or the input.
 *
 * @error CALC_UNKNOWN_MATERIAL, CALC_UNKNOWN_SUBSTANCE, CALC_MISSING_PROPERTY
 */
export const compatibilityOf = (exposure: Exposure): Outcome<Compatibility> => {
  const grade = materialGrade(exposure.material);
  if (!grade.ok) return grade;
  const medium = mediumOf(exposure.medium);
  if (!medium.ok) return medium;
  const state = stateOf(exposure, medium.value);

  const reasons: CompatibilityReason[] = [];
  const openFields = new Set<CorrosionField>();
  const worsening: { readonly fields: readonly CorrosionField[]; readonly reason: CompatibilityReason }[] =
    [];
  let decided = false;
  for (const rule of corrosionRulesOf(grade.value, medium.value)) {
    const applies = ruleApplies(rule, state);
    if (applies === 'no') continue;
    const { verdict, text, source, basis } = rule;
    if (applies === 'yes') {
      decided ||= rule.overlay !== true;
      reasons.push({ verdict, text, source, basis });
    } else {
      applies.forEach((field) => openFields.add(field));
      if (verdict !== 'suitable') {
        const stated = `${applies.map((field) => corrosionFieldNames[field]).join(' and ')} not given: ${text}`;
        worsening.push({ fields: applies, reason: { verdict: 'caution', text: stated, source, basis } });
      }
    }
  }
  const service = serviceReason(grade.value, state.temperatureC);
  if (service !== undefined) reasons.push(service);
  if (!decided && service?.verdict !== 'forbidden')
    return undecided(grade.value, medium.value, [...openFields]);

  reasons.push(...worsening.map(({ reason }) => reason));
  reasons.sort((a, b) => severity[b.verdict] - severity[a.verdict]);
  const verdict = reasons[0]?.verdict ?? 'suitable';
  return succeed({
    verdict,
    reasons,
    basis: weakestOfDeciding(reasons, verdict),
    missingInputs: verdict === 'forbidden' ? [] : [...new Set(worsening.flatMap(({ fields }) => fields))],
  });
};

/** For `suitable` every row must hold; a worse verdict is worth as much as its best row. */
const weakestOfDeciding = (reasons: readonly CompatibilityReason[], verdict: CorrosionVerdict): Basis => {
  const deciding = reasons.filter((reason) => reason.verdict === verdict).map(({ basis }) => basis);
  return verdict === 'suitable' || !deciding.includes('published') ? weakestBasis(deciding) : 'published';
};

const part = (unit: string, symbol: string, description: string) =>
  quantity({ unit, symbol, description }, z.number().min(0)).optional();

/**
 * Compatibility of a wetted part (metal, glass, polymer, seal) with a medium at its state.
 *
 * @param material      number or common name, also seals: FKM, FFKM, EPDM, PTFE, graphite
 * @param medium        common name or CAS number
 * @param temperatureK  T [K]
 * @param massPercent   strength of a solution [%]
 * @param waterPercent  water in the medium [%]; `dry` and `moist` say it in words
 * @returns verdict suitable, caution or forbidden; the reason, its basis, and the inputs that could make it worse
 * @range rows of corrosion-rules.json; nothing is extrapolated to `suitable`
 * @error CALC_UNKNOWN_MATERIAL, CALC_UNKNOWN_SUBSTANCE, CALC_MISSING_PROPERTY for a pair or an input that is missing
 * @source corrosion-rules.json, material-grades.json, each row with its own
 */
export const compatibility = calculation({
  id: 'materials.compatibility',
  title: 'Compatibility of a wetted part with a medium',
  inputs: z.strictObject({
    material: z.string().min(1).meta({ description: 'Material number or common name' }),
    medium: z.string().min(1).meta({ description: 'Common name or CAS number' }),
    temperatureK: quantity(
      { unit: 'K', symbol: 'T', description: 'Temperature of the medium at the part' },
      z.number().min(4).max(1500),
    ),
    massPercent: quantity(
      { unit: '%', symbol: 'w', description: 'Mass fraction of the medium in water' },
      z.number().min(0).max(100),
    ).optional(),
    waterPercent: quantity(
      { unit: '%', symbol: 'w_w', description: 'Mass fraction of water in the medium' },
      z.number().min(0).max(100),
    ).optional(),
    dry: z.boolean().optional().meta({ description: 'No water at all' }),
    moist: z
      .boolean()
      .optional()
      .meta({ description: 'As much water as a row asks for; give waterPercent where a figure is known' }),
    pressureBar: part('bar', 'p', 'Partial pressure of a gas'),
    chlorideMgPerL: part('mg/L', 'c_Cl', 'Chloride in the water'),
    ferricPpm: part('[ppm]', 'c_Fe', 'Ferric and cupric ions'),
    hydrogenChloridePercent: part('%', 'w_HCl', 'Hydrogen chloride or other strong acid in an alcohol'),
    sulfurTrioxidePercent: part('%', 'w_SO3', 'Free sulfur trioxide'),
  }),
  outputs: z.strictObject({
    verdict: z
      .enum(['suitable', 'caution', 'forbidden'])
      .meta({ description: 'The worst of all rows that hold for the state' }),
    reason: z.string().meta({ description: 'The row that decides' }),
    basis: basisSchema.meta({ description: 'What the deciding rows are worth' }),
    missingInputs: z.array(z.string()).meta({ description: 'Inputs that could make the verdict worse' }),
  }),
  formula: String.raw`\text{verdict} = \max_i \text{verdict of row } i`,
  range: 'the pairs and states of the rows; beyond them the answer names what is missing',
  source: [
    published('corrosion rows read in their sources, named a row'),
    commonPractice('neutral organic liquids and inert gases'),
    fromMemory('corrosion rows so marked'),
  ],
  compute: (inputs, log) => {
    const result = compatibilityOf(inputs);
    if (!result.ok) return result;
    const { verdict, reasons, basis, missingInputs } = result.value;
    for (const reason of reasons) {
      log?.({
        symbol: 'verdict',
        formula: reason.text,
        substituted: reason.source,
        value: reason.verdict,
        unit: '1',
        note: reason.basis,
      });
    }
    return succeed({ verdict, reason: reasons[0]?.text ?? '', basis, missingInputs: [...missingInputs] });
  },
});
