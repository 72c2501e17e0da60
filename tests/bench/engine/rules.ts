import type { Attribute, Catalogue, Slot } from './catalogue.js';
import { slotNames } from './catalogue.js';
import { hashed, type Random } from './random.js';

/** A rule over slots of one system: which levels it reads of each, and whether they go together. */
export type SlotRule =
  | {
      readonly kind: 'table';
      readonly slots: readonly number[];
      readonly attributes: readonly (readonly Attribute[])[];
      readonly allows: (levels: readonly (readonly number[])[]) => boolean;
    }
  /** The levels, each added or subtracted, stay within a limit. */
  | {
      readonly kind: 'limit';
      readonly slots: readonly number[];
      readonly attributes: readonly Attribute[];
      readonly signs: readonly (1 | -1)[];
      readonly most: number;
    };

const CLUSTERS = [
  [0, 1, 2],
  [3, 4, 5, 6, 7, 8],
  [9, 10, 11, 12],
  [13, 14, 15, 16],
  [17, 18, 19, 20],
  [21, 22, 23],
];

const levelsOf = (slot: Slot, attributes: readonly Attribute[], item: number): number[] =>
  attributes.map((a) => slot.attributes[a][item] as number);

/**
 * Draws rules: most lie within a cluster of slots, some reach the vessel, few go across. Sizes and ratings match, materials
 * and interfaces go together in some pairs and triples, and numbers stay within limits.
 */
export function drawRules({ slots, planted }: Catalogue, count: number, random: Random): SlotRule[] {
  const rules: SlotRule[] = [];
  const scope = (arity: number): number[] => {
    const where = random.next();
    const cluster = random.pick(CLUSTERS.slice(1));
    let pool: number[] = cluster;
    if (where < 0.1) pool = [...slotNames.keys()];
    else if (where < 0.4) pool = [...cluster.slice(0, 3), random.pick([0, 1, 2])];
    if (rules.length % 12 === 0) pool = [0, 1, 2];
    const chosen = new Set<number>();
    while (chosen.size < Math.min(arity, pool.length)) chosen.add(random.pick(pool));
    return [...chosen].sort((a, b) => a - b);
  };
  const match = (
    slots: readonly number[],
    attribute: Attribute,
    allows: (a: number, b: number) => boolean,
  ): void => {
    rules.push({
      kind: 'table',
      slots,
      attributes: [[attribute], [attribute]],
      allows: ([a, b]) => allows(a?.[0] ?? 0, b?.[0] ?? 0),
    });
  };
  const combine = (arity: number, attributes: readonly Attribute[], share: number): void => {
    const own = scope(arity);
    const kept = new Set(
      planted.map((p) => own.map((s) => levelsOf(slots[s] as Slot, attributes, p[s] as number)).join(';')),
    );
    const seed = random.below(1e9);
    rules.push({
      kind: 'table',
      slots: own,
      attributes: own.map(() => attributes),
      allows: (levels) => hashed(seed, levels.flat()) < share || kept.has(levels.join(';')),
    });
  };
  const limit = (): void => {
    const own = scope(2 + random.below(3));
    const attributes = own.map((): Attribute => (random.next() < 0.5 ? 'demand' : 'strength'));
    const signs = own.map((_, i): 1 | -1 => (i === 0 || random.next() < 0.6 ? 1 : -1));
    const total = (itemOf: (slot: number) => number): number =>
      own.reduce((sum, s, i) => {
        const levels = slots[s]?.attributes[attributes[i] as Attribute] as Int32Array;
        return sum + (signs[i] as number) * (levels[itemOf(s)] as number);
      }, 0);
    const needed = Math.max(...planted.map((p) => total((s) => p[s] as number)));
    const samples = Array.from({ length: 400 }, () => total((s) => random.below(slots[s]?.count as number)));
    samples.sort((a, b) => a - b);
    const quantile = samples[Math.floor(400 * (0.45 + 0.35 * random.next()))] as number;
    rules.push({ kind: 'limit', slots: own, attributes, signs, most: Math.max(needed, quantile) });
  };
  while (rules.length < count) {
    const kind = random.next();
    if (kind < 0.22) {
      const own = scope(2);
      const tolerance = random.next() < 0.5 ? 1 : 2;
      match(own, 'size', (a, b) => Math.abs(a - b) <= tolerance);
    } else if (kind < 0.34) match(scope(2), 'rating', (a, b) => a + 1 >= b);
    else if (kind < 0.5) combine(2, ['material'], 0.55);
    else if (kind < 0.6) combine(3, ['material'], 0.55);
    else if (kind < 0.72) combine(2, ['interface'], 0.5);
    else if (kind < 0.77) combine(3, random.next() < 0.5 ? ['size'] : ['size', 'material'], 0.5);
    else if (kind < 0.8) combine(4, ['material'], 0.45);
    else limit();
  }
  return rules;
}
