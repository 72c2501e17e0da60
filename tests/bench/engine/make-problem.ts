import type { ConstraintSpec, Problem, Side, SumSpec, VariableSpec } from '@flangewise/solver';
import {
  type Attribute,
  type Catalogue,
  makeCatalogue,
  type SizeName,
  sizes,
  type Slot,
} from './catalogue.js';
import { type Random, randomFrom } from './random.js';
import { drawRules, type SlotRule } from './rules.js';

/**
 * Shape of a problem. `plain`: one system of 24 slots, 60 rules. `full`: 140 rules, two vessel sets over the same catalogue
 * that share some slots, and sums over both.
 */
export type ShapeName = 'plain' | 'full';

const shapes: Record<ShapeName, { rules: number; sets: number; sums: boolean }> = {
  plain: { rules: 60, sets: 1, sums: false },
  full: { rules: 140, sets: 2, sums: true },
};

/** Slots of which all vessel sets together have one. */
const SHARED: ReadonlySet<number> = new Set([10, 12, 19, 20]);
const COVER = 1;
const CONTROLLER = 19;
/** Slots whose items each occupy a port of the cover. */
const PORT_USERS = [13, 14, 17, 18, 21, 22, 23];
const PORT_SIZES = 3;

/** The variable of each slot, for each set. */
type Places = readonly (readonly number[])[];

function placesOf(slots: readonly Slot[], sets: number): { places: Places; slotOf: number[] } {
  const slotOf = [...slots.keys()];
  const places = [[...slots.keys()]];
  for (let set = 1; set < sets; set++)
    places.push(
      slots.map((_, s) => {
        if (SHARED.has(s)) return s;
        slotOf.push(s);
        return slotOf.length - 1;
      }),
    );
  return { places, slotOf };
}

/** The classes that levels of some attributes make of a slot's items. */
function classesOf(
  slot: Slot,
  attributes: readonly Attribute[],
): { classOf: Uint16Array; levels: readonly number[][] } {
  const numberOf = new Map<string, number>();
  const levels: number[][] = [];
  const classOf = Uint16Array.from({ length: slot.count }, (_, i) => {
    const own = attributes.map((a) => slot.attributes[a][i] as number);
    const key = own.join();
    const known = numberOf.get(key);
    if (known !== undefined) return known;
    numberOf.set(key, levels.length);
    levels.push(own);
    return levels.length - 1;
  });
  return { classOf, levels };
}

/** Calls `visit` with every tuple of classes, row-major. */
function forEachTuple(counts: readonly number[], visit: (tuple: readonly number[]) => void): void {
  const tuple = counts.map(() => 0);
  const fill = (position: number): void => {
    if (position === counts.length) {
      visit(tuple);
      return;
    }
    for (let c = 0; c < (counts[position] as number); c++) {
      tuple[position] = c;
      fill(position + 1);
    }
  };
  fill(0);
}

type Instance = { readonly id: string; readonly scope: readonly number[] };

function tableOf(
  rule: SlotRule & { kind: 'table' },
  slots: readonly Slot[],
): (instance: Instance) => ConstraintSpec {
  const classes = rule.slots.map((s, i) => classesOf(slots[s] as Slot, rule.attributes[i] ?? []));
  const classCount = classes.map((c) => c.levels.length);
  const allowed = new Uint8Array(classCount.reduce((a, b) => a * b, 1));
  let at = 0;
  forEachTuple(classCount, (tuple) => {
    allowed[at++] = rule.allows(tuple.map((c, i) => classes[i]?.levels[c] as number[])) ? 1 : 0;
  });
  const classOf = classes.map((c) => c.classOf);
  return ({ id, scope }) => ({ kind: 'table', id, scope, classOf, classCount, allowed });
}

/** A limit on a sum where all is added; else what is added, compared to what is subtracted and the limit. */
function limitOf(
  rule: SlotRule & { kind: 'limit' },
  slots: readonly Slot[],
): (instance: Instance) => ConstraintSpec {
  const columns = rule.slots.map(
    (s, i) => slots[s]?.attributes[rule.attributes[i] as Attribute] as Int32Array,
  );
  if (rule.signs.every((sign) => sign === 1)) {
    const weights = columns.map((column) => Float64Array.from(column));
    return ({ id, scope }) => ({
      ...{ kind: 'sum', id, margin: 'ratio', limit: { constant: rule.most } },
      terms: scope.map((variable, i) => ({ variable, weights: weights[i] as Float64Array })),
    });
  }
  const side = (sign: 1 | -1, constant: number): ((scope: readonly number[]) => Side) => {
    const own = [...rule.slots.keys()].filter((i) => rule.signs[i] === sign);
    const classes = own.map((i) =>
      classesOf(slots[rule.slots[i] as number] as Slot, [rule.attributes[i] as Attribute]),
    );
    const classCount = classes.map((c) => c.levels.length);
    const values: number[] = [];
    forEachTuple(classCount, (tuple) => {
      values.push(tuple.reduce((sum, c, i) => sum + (classes[i]?.levels[c]?.[0] as number), constant));
    });
    const classOf = classes.map((c) => c.classOf);
    const array = Float64Array.from(values);
    return (scope) => ({ scope: own.map((i) => scope[i] as number), classOf, classCount, values: array });
  };
  const demand = side(1, 0);
  const limit = side(-1, rule.most);
  return ({ id, scope }) => ({
    ...{ kind: 'comparison', id, margin: 'ratio' },
    ...{ demand: demand(scope), limit: limit(scope) },
  });
}

function portsOf(
  { slots, planted }: Catalogue,
  levels: number,
  random: Random,
): (instance: Instance) => ConstraintSpec {
  const needOf = (s: number, i: number): number =>
    Math.min(PORT_SIZES - 1, Math.floor(((slots[s]?.attributes.size[i] as number) * PORT_SIZES) / levels));
  /** Ports of a size or more, by size, of each cover. */
  const ports = Array.from({ length: slots[COVER]?.count as number }, () => [
    7 + random.below(2),
    3 + random.below(4),
    1 + random.below(3),
  ]);
  for (const plant of planted) {
    const own = ports[plant[COVER] as number] as number[];
    for (let size = 0; size < PORT_SIZES; size++) {
      const needed = PORT_USERS.filter((s) => needOf(s, plant[s] as number) >= size).length;
      own[size] = Math.max(own[size] as number, needed);
    }
  }
  const hostPorts = ports.map((counts) =>
    Float64Array.from(
      counts.flatMap((n, size) => Array.from({ length: n - (counts[size + 1] ?? 0) }, () => size)),
    ),
  );
  const needs = PORT_USERS.map((s) =>
    Array.from({ length: slots[s]?.count as number }, (_, i) => Float64Array.of(needOf(s, i))),
  );
  return ({ id, scope: [host, ...users] }) => ({
    ...{ kind: 'ports', id, host: host as number, hostPorts },
    users: users.map((variable, u) => ({ variable, needs: needs[u] as Float64Array[] })),
  });
}

/** Masses and electrical loads over all sets; the controller's item sets the limit of the loads. */
function sumsOf({ slots, planted }: Catalogue, places: Places, random: Random): SumSpec[] {
  const weightsOf = (s: number, most: number): Float64Array =>
    Float64Array.from({ length: slots[s]?.count as number }, (_, i) => {
      const size = slots[s]?.attributes.size[i] as number;
      return Math.round(10 * (1 + size + most * random.next())) / 10;
    });
  const sumOver = (id: string, over: readonly number[], setter: number | null): SumSpec => {
    const weights = new Map(over.map((s) => [s, weightsOf(s, 12)]));
    const terms = places.flatMap((own, set) =>
      over
        .filter((s) => set === 0 || !SHARED.has(s))
        .map((s) => ({ variable: own[s] as number, slot: s, weights: weights.get(s) as Float64Array })),
    );
    const total = (itemOf: (s: number) => number): number =>
      terms.reduce((sum, t) => sum + (t.weights[itemOf(t.slot)] as number), 0);
    const needed = Math.max(...planted.map((p) => total((s) => p[s] as number)));
    const samples = Array.from({ length: 400 }, () => total((s) => random.below(slots[s]?.count as number)));
    samples.sort((a, b) => a - b);
    const quantile = (share: number): number =>
      Math.ceil(Math.max(needed, samples[Math.floor(400 * share)] as number));
    const limit =
      setter === null
        ? { constant: quantile(0.4) }
        : {
            variable: setter,
            values: Float64Array.from({ length: slots[setter]?.count as number }, (_, i) =>
              quantile(0.2 + 0.05 * (slots[setter]?.attributes.rating[i] as number)),
            ),
          };
    return { kind: 'sum', id, margin: 'ratio', terms: terms.map(({ slot: _, ...term }) => term), limit };
  };
  return [
    sumOver('mass', [0, 1, 2, 3, 4, 5, 7, 8, 9, 10], null),
    sumOver('load', [3, 10, 13, 15, 16, 17, 18], CONTROLLER),
  ];
}

/** A configuration problem in the shape of a catalogue of reactors, the same for the same seed on every machine. */
export function makeProblem(size: SizeName, seed: number, shape: ShapeName = 'plain'): Problem {
  const { rules: count, sets, sums } = shapes[shape];
  const random = randomFrom(seed * 7919 + size.charCodeAt(0));
  const catalogue = makeCatalogue(sizes[size], random);
  const { slots } = catalogue;
  const rules = drawRules(catalogue, count, random);
  const { places, slotOf } = placesOf(slots, sets);
  const ports = portsOf(catalogue, sizes[size].size, random);
  const variables = slotOf.map((s, x): VariableSpec => {
    const slot = slots[s] as Slot;
    return { id: `${slot.name}.${String(x)}`, size: slot.count, cost: slot.price, delay: slot.days };
  });
  const builders = rules.map((rule) => ({
    slots: rule.slots,
    build: rule.kind === 'table' ? tableOf(rule, slots) : limitOf(rule, slots),
  }));
  builders.push({ slots: [COVER, ...PORT_USERS], build: ports });
  const constraints = builders.flatMap(({ slots: own, build }, r) =>
    places
      // A rule over shared slots alone holds once.
      .filter((_, set) => set === 0 || own.some((s) => !SHARED.has(s)))
      .map((place, set) =>
        build({ id: `rule${String(r)}.${String(set)}`, scope: own.map((s) => place[s] as number) }),
      ),
  );
  if (sums) constraints.push(...sumsOf(catalogue, places, randomFrom(seed * 104_729 + 1)));
  return { variables, constraints };
}
