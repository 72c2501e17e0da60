import type { ConstraintSpec, Problem, Side, VariableSpec } from '../problem.js';

/** Random numbers in [0, 1) from a seed, the same on every machine. */
export function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** Levels of the attributes of an item. */
interface Item {
  readonly size: number;
  readonly rating: number;
  readonly material: number;
  readonly fit: number;
  readonly power: number;
  readonly mass: number;
}

type Attribute = keyof Item;

interface Slot {
  readonly name: string;
  readonly items: readonly Item[];
  readonly cost: Int32Array;
  readonly delay: Int32Array;
}

export interface ClusterOptions {
  readonly seed: number;
  /** Sets of 34 variables each, beside 2 variables that all sets share. */
  readonly sets: number;
  /** Items of one set, about. */
  readonly items: number;
}

const SLOTS = 34;
const OPTIONAL = 12;
const LEVELS: Record<Attribute, number> = { size: 8, rating: 6, material: 6, fit: 5, power: 12, mass: 400 };

/**
 * A configuration problem in the shape of a machine built from parts: a hub that most rules touch, clusters of parts
 * that depend on each other, optional parts that only meet in ports, masses and loads. Two full choices are planted, so
 * that solutions exist; several sets of the same parts hang on two shared variables.
 */
export function clusteredProblem(options: ClusterOptions): Problem {
  const random = randomFrom(options.seed * 7919 + options.sets);
  const below = (n: number): number => Math.floor(random() * n);
  const item = (): Item => ({
    size: below(LEVELS.size),
    rating: below(LEVELS.rating),
    material: below(LEVELS.material),
    fit: below(LEVELS.fit),
    power: below(LEVELS.power),
    mass: 1 + below(LEVELS.mass) / 10,
  });
  const weights = Array.from({ length: SLOTS }, () => 0.3 + random() * random() * 3);
  const totalWeight = weights.reduce((a, b) => a + b, 0);
  const planted = [item(), item()];
  const slotOf = (name: string, count: number, optional: boolean): Slot => {
    const items = Array.from({ length: count }, (_, i): Item => {
      const made = item();
      const plant = planted[optional ? i - 1 : i];
      return plant
        ? { ...made, size: plant.size, rating: plant.rating, material: plant.material, fit: plant.fit }
        : made;
    });
    const cost = Int32Array.from(items, (it, i) =>
      optional && i === 0
        ? 0
        : Math.round(
            (90 + 60 * it.size + 45 * it.rating + 70 * ((it.material * 5) % 6)) * (0.7 + 0.6 * random()),
          ),
    );
    return {
      name,
      items,
      cost,
      delay: Int32Array.from(items, (_, i) => (optional && i === 0 ? 0 : 1 + below(40))),
    };
  };
  const catalogue = weights.map((w, s) => {
    const count = Math.max(5, Math.min(60, Math.round((options.items * w) / totalWeight)));
    return slotOf(`part${String(s)}`, count, s >= SLOTS - OPTIONAL);
  });
  const shared = [slotOf('frame', 8, false), slotOf('supply', 8, false)];
  const slots = [...shared, ...Array.from({ length: options.sets }, () => catalogue).flat()];

  const variables = slots.map((slot, x): VariableSpec => ({
    id: `${slot.name}.${String(x)}`,
    size: slot.items.length,
    cost: slot.cost,
    delay: slot.delay,
  }));
  const constraints: ConstraintSpec[] = [];
  const levelsOf = (x: number, attribute: Attribute): Uint16Array =>
    Uint16Array.from(slots[x]?.items ?? [], (it) => Math.floor(it[attribute]));
  const classed = (scope: readonly number[], attributes: readonly Attribute[]) => ({
    scope,
    classOf: scope.map((x, i) => levelsOf(x, attributes[i] as Attribute)),
    classCount: attributes.map((a) => LEVELS[a]),
  });
  const tabulate = <T>(counts: readonly number[], cell: (tuple: number[]) => T): T[] => {
    const total = counts.reduce((a, b) => a * b, 1);
    return Array.from({ length: total }, (_, t) => {
      let rest = t;
      const tuple = [...counts].reverse().map((n) => {
        const level = rest % n;
        rest = (rest - level) / n;
        return level;
      });
      return cell(tuple.reverse());
    });
  };
  const isPlanted = (attributes: readonly Attribute[], tuple: readonly number[]): boolean =>
    planted.some((p) => attributes.every((a, i) => p[a] === tuple[i]));
  const nextId = (kind: string): string => `${kind}${String(constraints.length)}`;
  const addTable = (
    rule: { scope: number[]; attributes: Attribute[] },
    isAllowed: (tuple: number[]) => boolean,
  ): void => {
    const base = classed(rule.scope, rule.attributes);
    const allowed = Uint8Array.from(
      tabulate(base.classCount, (t) => (isPlanted(rule.attributes, t) || isAllowed(t) ? 1 : 0)),
    );
    constraints.push({ kind: 'table', id: nextId('table'), ...base, allowed });
  };
  const side = (scope: number[], attributes: Attribute[], of: (tuple: number[]) => number): Side => {
    const base = classed(scope, attributes);
    return { ...base, values: Float64Array.from(tabulate(base.classCount, of)) };
  };

  for (let set = 0; set < options.sets; set++) {
    const at = (s: number): number => shared.length + set * SLOTS + s;
    const hub = at(0);
    const clusters = [
      [1, 2, 3, 4],
      [5, 6, 7, 8, 9],
      [10, 11, 12, 13],
      [14, 15, 16, 17],
      [18, 19, 20, 21],
    ].map((c) => c.map(at));
    const optional = Array.from({ length: OPTIONAL }, (_, i) => at(SLOTS - OPTIONAL + i));
    const pick = (list: readonly number[], n: number): number[] => {
      const pool = [...list];
      return Array.from(
        { length: Math.min(n, pool.length) },
        () => pool.splice(below(pool.length), 1)[0] as number,
      );
    };
    for (const cluster of clusters) {
      // Every part fits the hub or its neighbour; materials go together; sizes within two steps.
      for (const x of cluster) {
        const kind = below(3);
        if (kind === 0)
          addTable(
            { scope: [hub, x], attributes: ['size', 'size'] },
            (t) => Math.abs((t[0] ?? 0) - (t[1] ?? 0)) <= 1,
          );
        if (kind === 1)
          addTable({ scope: [hub, x], attributes: ['material', 'material'] }, () => random() < 0.5);
        if (kind === 2)
          addTable(
            { scope: [hub, x], attributes: ['rating', 'rating'] },
            (t) => (t[0] ?? 0) <= (t[1] ?? 0) + 1,
          );
      }
      for (let pair = 0; pair < 2; pair++)
        addTable({ scope: pick(cluster, 2), attributes: ['fit', 'fit'] }, () => random() < 0.5);
      addTable(
        { scope: pick([hub, ...cluster], 3), attributes: ['material', 'size', 'rating'] },
        () => random() < 0.6,
      );
      // A load that two parts make and two parts carry.
      const [a, b, c, d] = pick([hub, ...cluster], 4) as [number, number, number, number];
      const most = 11 + 7 + 3;
      constraints.push({
        kind: 'comparison',
        id: nextId('load'),
        demand: side([a, b], ['power', 'size'], (t) => (t[0] ?? 0) * 0.6 + (t[1] ?? 0)),
        limit: side([c, d], ['rating', 'fit'], (t) => most * (0.35 + 0.1 * (t[0] ?? 0) + 0.05 * (t[1] ?? 0))),
        margin: 'ratio',
      });
    }
    for (let cross = 0; cross < 4; cross++) {
      const [from, to] = pick([0, 1, 2, 3, 4], 2) as [number, number];
      const scope = [...pick(clusters[from] ?? [], 1), ...pick(clusters[to] ?? [], 1)];
      addTable({ scope, attributes: ['material', 'rating'] }, () => random() < 0.7);
    }
    addTable(
      { scope: [hub, 0], attributes: ['size', 'size'] },
      (t) => Math.abs((t[0] ?? 0) - (t[1] ?? 0)) <= 3,
    );
    addTable({ scope: [clusters[3]?.[0] as number, 1], attributes: ['fit', 'fit'] }, () => random() < 0.7);
    for (const x of optional)
      if (random() < 0.5)
        addTable(
          { scope: [hub, x], attributes: ['material', 'material'] },
          (t) => random() < 0.6 || t[1] === 0,
        );
    // Some optional parts are asked for.
    for (const x of pick(optional, 5))
      constraints.push({
        kind: 'table',
        id: nextId('wanted'),
        scope: [x],
        allowed: Uint8Array.from({ length: slots[x]?.items.length ?? 0 }, (_, v) => (v === 0 ? 0 : 1)),
      });
    const portSize = (x: number, v: number): number => 1 + Math.floor((slots[x]?.items[v]?.size ?? 0) / 3);
    constraints.push({
      kind: 'ports',
      id: nextId('ports'),
      host: clusters[0]?.[0] as number,
      hostPorts: Array.from(slots[clusters[0]?.[0] as number]?.items ?? [], () =>
        Float64Array.from(
          [1, 1, 1, 1, 2, 2, 2, 3, 3].slice(0, 7 + below(3)).map((s) => s + (random() < 0.2 ? 1 : 0)),
        ),
      ),
      users: optional.map((variable) => ({
        variable,
        needs: Array.from(slots[variable]?.items ?? [], (_, v) =>
          v === 0 ? Float64Array.of() : Float64Array.of(portSize(variable, v)),
        ),
      })),
    });
    const sum = (
      parts: number[],
      attribute: 'mass' | 'power',
      limit: { variable: number; share: number },
    ): void => {
      const terms = parts.map((variable) => ({
        variable,
        weights: Float64Array.from(slots[variable]?.items ?? [], (it) => it[attribute]),
      }));
      const mean = parts.length * (attribute === 'mass' ? 20 : 6);
      constraints.push({
        kind: 'sum',
        id: nextId(attribute),
        terms,
        limit: {
          variable: limit.variable,
          values: Float64Array.from(
            slots[limit.variable]?.items ?? [],
            (it) => mean * (limit.share + 0.08 * it.rating),
          ),
        },
      });
    };
    sum([hub, ...(clusters[0] ?? []), ...(clusters[1] ?? [])], 'mass', { variable: 0, share: 0.8 });
    sum([...(clusters[2] ?? []), ...(clusters[3] ?? []), ...optional.slice(0, 4)], 'power', {
      variable: 1,
      share: 0.7,
    });
  }
  return { variables, constraints };
}
