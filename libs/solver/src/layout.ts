import { fullSet, lowestBit, wordsFor } from './bits.js';
import type { ClassMap } from './class-map.js';

/**
 * How one or more constraints see a variable: the classes of its groups. The set of classes that still have a group in
 * the domain stands in the state; where the classes are the groups themselves, it is the domain.
 */
export interface View {
  readonly variable: number;
  readonly count: number;
  readonly words: number;
  /** First word in the state. */
  readonly offset: number;
  readonly isDomain: boolean;
  /** Class of each group. */
  readonly classOf: Uint16Array;
  /** Groups of each class, `domainWords` words for each. */
  readonly masks: Uint32Array;
  readonly domainOffset: number;
  readonly domainWords: number;
}

/** Values that no constraint tells apart form a group; the search knows only groups. */
export interface Layout {
  readonly variables: number;
  /** `groupOf[x][v]` */
  readonly groupOf: readonly Uint16Array[];
  /** `members[x][g]`: values, ascending */
  readonly members: readonly (readonly Int32Array[])[];
  /** Groups of each variable. */
  readonly size: Int32Array;
  /** First domain word of each variable; one more entry for the end of the domains. */
  readonly domain: Int32Array;
  readonly views: readonly View[];
  readonly viewsOf: readonly Int32Array[];
  /** Words in a state: domains, then views, then one bit for each constraint that can do no more. */
  readonly words: number;
  readonly settledOffset: number;
}

/** Groups the values of one variable that are in the same class of every map. */
function groupValues(
  size: number,
  maps: readonly ClassMap[],
): { groupOf: Uint16Array; members: Int32Array[] } {
  let groupOf = new Uint16Array(size);
  let groups = 1;
  for (const { classOf, count } of maps) {
    const numberOf = new Map<number, number>();
    const next = new Uint16Array(size);
    for (let v = 0; v < size; v++) {
      const key = (groupOf[v] as number) * count + (classOf[v] as number);
      let number = numberOf.get(key);
      if (number === undefined) {
        number = numberOf.size;
        numberOf.set(key, number);
      }
      next[v] = number;
    }
    groupOf = next;
    groups = numberOf.size;
  }
  const members: number[][] = Array.from({ length: groups }, () => []);
  for (let v = 0; v < size; v++) members[groupOf[v] as number]?.push(v);
  return { groupOf, members: members.map((m) => Int32Array.from(m)) };
}

function makeView(
  map: ClassMap,
  members: readonly Int32Array[],
  place: { domain: number; next: number },
): View {
  const groups = members.length;
  const domainWords = wordsFor(groups);
  const classOf = Uint16Array.from(members, (m) => map.classOf[m[0] as number] as number);
  const masks = new Uint32Array(map.count * domainWords);
  for (let g = 0; g < groups; g++) {
    const at = (classOf[g] as number) * domainWords + (g >>> 5);
    masks[at] = (masks[at] as number) | (1 << (g & 31));
  }
  // Both numberings follow first appearance, so as many classes as groups means equal numbers.
  const isDomain = map.count === groups;
  return {
    variable: map.variable,
    count: map.count,
    words: wordsFor(map.count),
    offset: isDomain ? place.domain : place.next,
    isDomain,
    classOf,
    masks,
    domainOffset: place.domain,
    domainWords,
  };
}

/**
 * Lays out the state for constraints that see their variables through `maps` (one list for each constraint).
 * Returns the layout, and for each constraint the view of each of its maps.
 */
export function makeLayout(
  sizes: readonly number[],
  maps: readonly (readonly ClassMap[])[],
): { layout: Layout; viewIds: Int32Array[] } {
  const distinct = new Map<string, ClassMap>();
  const keys = maps.map((list) =>
    list.map((map) => {
      const key = `${String(map.variable)}:${map.classOf.join()}`;
      if (!distinct.has(key)) distinct.set(key, map);
      return key;
    }),
  );
  const mapsOf: ClassMap[][] = sizes.map(() => []);
  for (const map of distinct.values()) mapsOf[map.variable]?.push(map);
  const grouped = sizes.map((size, x) => groupValues(size, mapsOf[x] ?? []));
  const domain = new Int32Array(sizes.length + 1);
  for (const [x, { members }] of grouped.entries())
    domain[x + 1] = (domain[x] as number) + wordsFor(members.length);

  const views: View[] = [];
  const idOf = new Map<string, number>();
  const viewsOf: number[][] = sizes.map(() => []);
  let next = domain[sizes.length] as number;
  for (const [key, map] of distinct) {
    const view = makeView(map, grouped[map.variable]?.members ?? [], {
      domain: domain[map.variable] as number,
      next,
    });
    if (!view.isDomain) next += view.words;
    idOf.set(key, views.length);
    viewsOf[map.variable]?.push(views.length);
    views.push(view);
  }
  const layout: Layout = {
    variables: sizes.length,
    groupOf: grouped.map((g) => g.groupOf),
    members: grouped.map((g) => g.members),
    size: Int32Array.from(grouped, (g) => g.members.length),
    domain,
    views,
    viewsOf: viewsOf.map((list) => Int32Array.from(list)),
    settledOffset: next,
    words: next + wordsFor(maps.length),
  };
  return { layout, viewIds: keys.map((list) => Int32Array.from(list, (key) => idOf.get(key) as number)) };
}

/** The state in which everything is open. */
export function openState(layout: Layout): Uint32Array {
  const state = new Uint32Array(layout.words);
  for (let x = 0; x < layout.variables; x++)
    state.set(fullSet(layout.size[x] as number), layout.domain[x] as number);
  for (const view of layout.views) state.set(fullSet(view.count), view.offset);
  return state;
}

/** Calls `visit` with each group in the domain of a variable. */
export function forEachGroup(
  layout: Layout,
  at: { state: Uint32Array; variable: number },
  visit: (group: number) => void,
): void {
  const start = layout.domain[at.variable] as number;
  const end = layout.domain[at.variable + 1] as number;
  for (let w = start; w < end; w++)
    for (let word = at.state[w] as number; word !== 0; word &= word - 1)
      visit(((w - start) << 5) + lowestBit(word));
}
