import { type Compatibility, compatibilityOf, mediumOf } from '@flangewise/engineering';
import { setSlots } from '@flangewise/model';
import type { ConditionMedium, Conditions } from '../../conditions.js';
import { caution, type Judgement, met, notDecidable, notMet } from '../../figure.js';
import { partRule } from '../../rule.js';
import { published } from '../../source.js';

const isOnFile = (medium: ConditionMedium): boolean => mediumOf(medium.name).ok;

/** Media of which the tables hold nothing for any material. An unknown catalyst is taken for a solid that does no harm. */
export const mediaNotOnFile = (media: readonly ConditionMedium[]): readonly ConditionMedium[] =>
  media.filter((medium) => medium.role !== 'catalyst' && !isOnFile(medium));

const ambientK = 293.15;

interface Finding {
  readonly verdict: 'suitable' | 'suitable by memory' | 'caution' | 'forbidden' | 'unknown';
  readonly text: string;
  readonly missing?: string;
}

interface At {
  readonly temperatureK: number;
  readonly pressureBar: number | undefined;
}

/** Media of which one has to know whether they hold water. */
type Moisture = { readonly dry: boolean } | { readonly moist: boolean } | Record<string, never>;

const verdictOn = (
  material: string,
  medium: ConditionMedium,
  { at, moisture }: { at: At; moisture: Moisture },
) =>
  compatibilityOf({
    material,
    medium: medium.name,
    temperatureK: at.temperatureK,
    ...(medium.massFraction === undefined ? {} : { massPercent: medium.massFraction * 100 }),
    ...(at.pressureBar === undefined ? {} : { pressureBar: at.pressureBar }),
    ...(medium.dry === undefined ? moisture : { dry: medium.dry }),
  });

/** Nobody said whether the medium is dry: where one of both cases is forbidden, that case counts until it is said. */
const worstByMoisture = (material: string, medium: ConditionMedium, at: At): string | undefined => {
  if (medium.dry !== undefined) return undefined;
  const cases = [
    { moisture: { dry: true }, said: 'moist' },
    { moisture: { moist: true }, said: 'dry' },
  ];
  for (const { moisture, said } of cases) {
    const outcome = verdictOn(material, medium, { at, moisture });
    if (outcome.ok && outcome.value.verdict === 'forbidden') {
      return `${outcome.value.reasons[0]?.text ?? 'forbidden'}; refused until it is said to be ${said}`;
    }
  }
  return undefined;
};

const findingOf = (material: string, medium: ConditionMedium, at: At): Finding => {
  const pair = `${material} in ${medium.name}`;
  const outcome = verdictOn(material, medium, { at, moisture: {} });
  if (outcome.ok && outcome.value.verdict === 'forbidden') {
    return { verdict: 'forbidden', text: `${pair}: ${reasonOf(outcome.value)}` };
  }
  const worst = worstByMoisture(material, medium, at);
  if (worst !== undefined) return { verdict: 'forbidden', text: `${pair}: ${worst}` };
  if (!outcome.ok)
    return {
      verdict: 'unknown',
      text: `${pair}: ${outcome.error.code === 'CALC_MISSING_PROPERTY' ? outcome.error.message : 'no tested verdict is on file'}`,
      missing: `corrosion of ${pair}`,
    };
  const { verdict, basis } = outcome.value;
  const byMemory = verdict === 'suitable' && basis === 'from memory, unverified';
  return { verdict: byMemory ? 'suitable by memory' : verdict, text: `${pair}: ${reasonOf(outcome.value)}` };
};

const reasonOf = ({ verdict, reasons, basis }: Compatibility): string =>
  `${reasons[0]?.text ?? verdict}${basis === 'from memory, unverified' ? ' (from memory, unverified)' : ''}`;

const rank = { forbidden: 0, unknown: 1, caution: 2, 'suitable by memory': 3, suitable: 4 } as const;

type CorrosionConditions = Pick<Conditions, 'media' | 'temperatureMaxK' | 'pressureMaxPaGauge'>;

/** Every finding of these materials against every medium on file, the worst first. */
const findingsOf = (
  wetted: readonly string[],
  { media, temperatureMaxK, pressureMaxPaGauge }: CorrosionConditions,
): readonly Finding[] => {
  const at: At = {
    temperatureK: temperatureMaxK ?? ambientK,
    pressureBar: pressureMaxPaGauge === undefined ? undefined : pressureMaxPaGauge / 1e5,
  };
  return wetted
    .flatMap((material) => media.filter(isOnFile).map((medium) => findingOf(material, medium, at)))
    .sort((a, b) => rank[a.verdict] - rank[b.verdict]);
};

const judged = (finding: Finding, text: string): Judgement => {
  const verdicts: Record<Finding['verdict'], Judgement> = {
    forbidden: notMet(text),
    unknown: notDecidable(text, finding.missing ?? 'process.media'),
    caution: caution(text),
    // A verdict that rests on memory is never better than met with caution.
    'suitable by memory': caution(text),
    suitable: met,
  };
  return verdicts[finding.verdict];
};

/**
 * A material by itself, with everything that speaks against it. Beside a medium that is not on file it is met with
 * caution at best; `material.medium-on-file` asks for that medium.
 */
export const judgeMaterial = (material: string, conditions: CorrosionConditions): Judgement | undefined => {
  const [worst, ...others] = findingsOf([material], conditions);
  const unknown = mediaNotOnFile(conditions.media)
    .map(({ name }) => name)
    .join(', ');
  if (worst === undefined)
    return unknown === ''
      ? undefined
      : notDecidable(`${unknown}: no tested verdict is on file for any material.`, 'process.media');
  if (worst.verdict === 'suitable' && unknown !== '')
    return caution(`Suitable as far as the media are on file; ${unknown} is not.`);
  const against = [worst, ...others].filter((f) => f.verdict !== 'suitable').map((f) => f.text);
  return judged(worst, `${[...new Set(against)].join('. ')}.`);
};

/** Wetted materials of a part against every medium on file: the worst finding decides. */
export const judgeMaterials = (
  name: string,
  wetted: readonly string[],
  conditions: CorrosionConditions,
): Judgement | undefined => {
  const [worst] = findingsOf(wetted, conditions);
  return worst === undefined ? undefined : judged(worst, `${name}: ${worst.text}.`);
};

export const corrosion = partRule({
  id: 'material.corrosion',
  title: 'Every wetted part stands the media',
  group: 'material',
  kind: 'hard',
  each: setSlots,
  reads: ['wetted'],
  beside: {},
  conditions: ['media', 'temperatureMaxK', 'pressureMaxPaGauge'],
  judge: (part, conditions) => judgeMaterials(part.name, part.wetted, conditions),
  met: 'Every wetted part is suitable for every medium on file at the highest temperature.',
  source: [published('corrosion rows, each with its own source')],
});
