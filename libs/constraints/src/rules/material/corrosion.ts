import { compatibilityOf } from '@flangewise/engineering';
import { setSlots } from '@flangewise/model';
import type { ConditionMedium, Conditions } from '../../conditions.js';
import { caution, type Judgement, met, notDecidable, notMet } from '../../figure.js';
import { partRule } from '../../rule.js';
import { published } from '../../source.js';

/** Media that corrode; catalysts and inert gases do not decide. */
const isCorrosive = (medium: ConditionMedium): boolean =>
  medium.role !== 'catalyst' && medium.role !== 'inert gas';

const ambientK = 293.15;

interface Finding {
  readonly verdict: 'suitable' | 'suitable by memory' | 'caution' | 'forbidden' | 'unknown';
  readonly text: string;
  readonly missing?: string;
}

const findingOf = (
  material: string,
  medium: ConditionMedium,
  at: { temperatureK: number; pressureBar: number | undefined },
): Finding => {
  const outcome = compatibilityOf({
    material,
    medium: medium.name,
    temperatureK: at.temperatureK,
    ...(medium.massFraction === undefined ? {} : { massPercent: medium.massFraction * 100 }),
    ...(at.pressureBar === undefined ? {} : { pressureBar: at.pressureBar }),
    ...(medium.dry === undefined ? {} : { dry: medium.dry }),
  });
  const pair = `${material} in ${medium.name}`;
  if (!outcome.ok) {
    return {
      verdict: 'unknown',
      text: `${pair}: no tested verdict is on file`,
      missing: `corrosion of ${pair}`,
    };
  }
  const { verdict, reasons, basis } = outcome.value;
  const isFromMemory = basis === 'from memory, unverified';
  return {
    verdict: verdict === 'suitable' && isFromMemory ? 'suitable by memory' : verdict,
    text: `${pair}: ${reasons[0]?.text ?? verdict}${isFromMemory ? ' (from memory, unverified)' : ''}`,
  };
};

const rank = { forbidden: 0, unknown: 1, caution: 2, 'suitable by memory': 3, suitable: 4 } as const;

type CorrosionConditions = Pick<Conditions, 'media' | 'temperatureMaxK' | 'pressureMaxPaGauge'>;

/** Wetted materials of a part against every medium of the process: the worst finding decides. */
export const judgeMaterials = (
  name: string,
  wetted: readonly string[],
  { media, temperatureMaxK, pressureMaxPaGauge }: CorrosionConditions,
): Judgement | undefined => {
  const corrosive = media.filter(isCorrosive);
  if (wetted.length === 0 || corrosive.length === 0) return undefined;
  const at = {
    temperatureK: temperatureMaxK ?? ambientK,
    pressureBar: pressureMaxPaGauge === undefined ? undefined : pressureMaxPaGauge / 1e5,
  };
  const findings = wetted.flatMap((material) => corrosive.map((medium) => findingOf(material, medium, at)));
  const [worst] = [...findings].sort((a, b) => rank[a.verdict] - rank[b.verdict]);
  if (worst === undefined) return undefined;
  const text = wetted.length === 1 && wetted[0] === name ? `${worst.text}.` : `${name}: ${worst.text}.`;
  if (worst.verdict === 'forbidden') return notMet(text);
  if (worst.verdict === 'unknown') return notDecidable(text, worst.missing ?? 'process.media');
  return worst.verdict === 'suitable' ? met : caution(text);
};

export const corrosion = partRule({
  id: 'material.corrosion',
  title: 'Every wetted part stands every medium',
  group: 'material',
  kind: 'hard',
  each: setSlots,
  reads: ['wetted'],
  beside: {},
  conditions: ['media', 'temperatureMaxK', 'pressureMaxPaGauge'],
  judge: (part, conditions) => judgeMaterials(part.name, part.wetted, conditions),
  met: 'Every wetted part is suitable for every medium at the highest temperature.',
  source: [published('corrosion rows, each with its own source')],
});
