import { z } from 'zod';
import { basisSchema } from './basis.js';
import type { MaterialGrade } from './material-grade.js';
import type { Medium } from './medium.js';
import rows from './corrosion-rules.json' with { type: 'json' };

const boundSchema = z.strictObject({
  from: z.number().optional(),
  above: z.number().optional(),
  to: z.number().optional(),
  below: z.number().optional(),
});

/** What a row may ask about besides the temperature. */
export const corrosionFields = [
  'massPercent',
  'waterPercent',
  'pressureBar',
  'hydrogenChloridePercent',
  'ferricPpm',
  'chlorideMgPerL',
  'sulfurTrioxidePercent',
] as const;

export type CorrosionField = (typeof corrosionFields)[number];

/** The fields in words, for sentences. */
export const corrosionFieldNames: Readonly<Record<CorrosionField, string>> = {
  massPercent: 'strength of the solution',
  waterPercent: 'share of water',
  pressureBar: 'partial pressure',
  hydrogenChloridePercent: 'share of strong acid',
  ferricPpm: 'ferric ions',
  chlorideMgPerL: 'chloride',
  sulfurTrioxidePercent: 'free sulfur trioxide',
};

const corrosionRuleSchema = z.strictObject({
  /** Materials or families of materials. */
  materials: z.array(z.string()).min(1),
  /** Media, families of media, or `*`. */
  media: z.array(z.string()).min(1),
  verdict: z.enum(['suitable', 'caution', 'forbidden']),
  when: z
    .strictObject({
      temperatureC: boundSchema.optional(),
      massPercent: boundSchema.optional(),
      waterPercent: boundSchema.optional(),
      pressureBar: boundSchema.optional(),
      hydrogenChloridePercent: boundSchema.optional(),
      ferricPpm: boundSchema.optional(),
      chlorideMgPerL: boundSchema.optional(),
      sulfurTrioxidePercent: boundSchema.optional(),
    })
    .optional(),
  /** Highest temperature [°C] up to each value of a field: `[[5, 25], [20, 10]]`; past the last value there is none. */
  steps: z
    .strictObject({
      field: z.enum(corrosionFields),
      limits: z.array(z.tuple([z.number(), z.number()])).min(1),
      side: z.enum(['within', 'beyond']),
    })
    .optional(),
  /** The row speaks only when everything that it asks is stated: traces that are normally absent. */
  onlyIfStated: z.literal(true).optional(),
  /** The row adds to the verdict of others and never stands alone. */
  overlay: z.literal(true).optional(),
  text: z.string(),
  source: z.string(),
  basis: basisSchema,
});

export type CorrosionRule = z.output<typeof corrosionRuleSchema>;
export type CorrosionVerdict = CorrosionRule['verdict'];
type Bound = z.output<typeof boundSchema>;

const corrosionRules: readonly CorrosionRule[] = z.array(corrosionRuleSchema).parse(rows);

const rulesOfPair = new Map<string, readonly CorrosionRule[]>();

/** The rows that speak of a material in a medium. */
export const corrosionRulesOf = (grade: MaterialGrade, medium: Medium): readonly CorrosionRule[] => {
  const pair = `${grade.key}|${medium.key}`;
  const known = rulesOfPair.get(pair);
  if (known !== undefined) return known;
  const materialNames = new Set([grade.key, ...grade.families]);
  const mediumNames = new Set(['*', medium.key, ...medium.families]);
  const found = corrosionRules.filter(
    (rule) =>
      rule.materials.some((name) => materialNames.has(name)) &&
      rule.media.some((name) => mediumNames.has(name)),
  );
  rulesOfPair.set(pair, found);
  return found;
};

/** Values of the fields; moisture may be known in words only. */
export interface CorrosionState extends Readonly<Partial<Record<CorrosionField, number>>> {
  readonly temperatureC: number;
  /** Moist enough for whatever a row asks, with no figure. */
  readonly moist: boolean;
}

/** Whether a row applies: yes, no, or open because fields are not stated. */
export type Applies = 'yes' | 'no' | readonly CorrosionField[];

const inside = ({ from, above, to, below }: Bound, value: number): boolean =>
  (from === undefined || value >= from) &&
  (above === undefined || value > above) &&
  (to === undefined || value <= to) &&
  (below === undefined || value < below);

const limitTemperatureC = (limits: readonly (readonly [number, number])[], value: number): number =>
  limits.find(([upTo]) => value <= upTo)?.[1] ?? Number.NEGATIVE_INFINITY;

/** Rounding of °C to K and back must not move a temperature off a limit. */
const onGrid = (value: number): number => Math.round(value * 1e6) / 1e6;

export const ruleApplies = (rule: CorrosionRule, state: CorrosionState): Applies => {
  const temperatureC = onGrid(state.temperatureC);
  const open: CorrosionField[] = [];
  if (rule.when?.temperatureC !== undefined && !inside(rule.when.temperatureC, temperatureC)) return 'no';
  for (const field of corrosionFields) {
    const bound = rule.when?.[field];
    if (bound === undefined) continue;
    const value = state[field];
    if (value !== undefined) {
      if (!inside(bound, value)) return 'no';
    } else if (field === 'waterPercent' && state.moist) {
      if (bound.to !== undefined || bound.below !== undefined) return 'no';
    } else {
      open.push(field);
    }
  }
  if (rule.steps !== undefined) {
    const value = state[rule.steps.field];
    if (value === undefined) open.push(rule.steps.field);
    else {
      const within = temperatureC <= limitTemperatureC(rule.steps.limits, value);
      if (within !== (rule.steps.side === 'within')) return 'no';
    }
  }
  if (open.length === 0) return 'yes';
  return rule.onlyIfStated === true ? 'no' : open;
};
