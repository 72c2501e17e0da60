import { lowestBit } from './bits.js';
import type { Constraint } from './constraint.js';
import type { DecisionDiagram } from './decision-diagram.js';
import { buildDecisionDiagram } from './decision-diagram.js';
import type { Scope } from './elimination-tree.js';
import { forEachGroup } from './layout.js';
import type { Network } from './network.js';

/** A constraint over the open variables of a state, its variables from the top of a tree down. */
export interface Relation {
  readonly variables: readonly number[];
  /** Number of each group's class among the present classes, by position; −1 for absent ones. */
  readonly classOf: readonly Int32Array[];
  readonly diagram: DecisionDiagram;
}

interface Place {
  readonly position: number;
  readonly variable: number;
  readonly present: readonly number[];
}

interface Draft {
  readonly constraint: Constraint;
  readonly places: readonly Place[];
  /** One class of each position, the only one where it is fixed. */
  readonly classes: Int32Array;
}

export interface OpenRelations {
  readonly variables: readonly number[];
  /** Present groups of each open variable. */
  readonly groups: readonly (readonly number[])[];
  readonly scopes: readonly Scope[];
  /** Numbers of constraints that have too many combinations, or see a variable twice. */
  readonly leftOut: readonly number[];
  /** Works the relations out, ordered by the depth of their variables. */
  tabulate(depth: Int32Array): Relation[];
}

function presentClasses(network: Network, id: number): number[] {
  const { offset, words } = network.view(id);
  const present: number[] = [];
  for (let w = 0; w < words; w++)
    for (let word = network.state[offset + w] as number; word !== 0; word &= word - 1)
      present.push((w << 5) + lowestBit(word));
  return present;
}

function tabulate(network: Network, { constraint, places, classes }: Draft): Relation {
  const counts = places.map((p) => p.present.length);
  const cells = new Uint8Array(counts.reduce((a, b) => a * b, 1));
  const fill = (place: number, base: number): void => {
    const { position, present } = places[place] as Place;
    for (const [i, c] of present.entries()) {
      classes[position] = c;
      const index = base * present.length + i;
      if (place + 1 < places.length) fill(place + 1, index);
      else if (constraint.allows(classes)) cells[index] = 1;
    }
  };
  fill(0, 0);
  const classOf = places.map(({ position, present }) => {
    const numberOf = new Map(present.map((c, i) => [c, i]));
    return Int32Array.from(
      network.view(constraint.views[position] as number).classOf,
      (c) => numberOf.get(c) ?? -1,
    );
  });
  return { variables: places.map((p) => p.variable), classOf, diagram: buildDecisionDiagram(counts, cells) };
}

/**
 * The unsettled constraints of the network's state over its open variables.
 * @param among only these variables, a component
 */
export function openRelations(
  network: Network,
  mostTuples: number,
  among?: ReadonlySet<number>,
): OpenRelations {
  const { layout, state, constraints } = network;
  const groups = Array.from({ length: layout.variables }, (_, variable) => {
    const list: number[] = [];
    if (!among || among.has(variable)) forEachGroup(layout, { state, variable }, (g) => list.push(g));
    return list;
  });
  const drafts: Draft[] = [];
  const leftOut: number[] = [];
  for (const [index, constraint] of constraints.entries()) {
    if (network.isSettled(index)) continue;
    const presents = Array.from(constraint.views, (id) => presentClasses(network, id));
    const places = presents
      .map((present, position) => ({
        position,
        present,
        variable: network.view(constraint.views[position] as number).variable,
      }))
      .filter((p) => p.present.length > 1);
    if (places.length === 0 || (among && !places.some((p) => among.has(p.variable)))) continue;
    const tuples = places.reduce((product, p) => product * p.present.length, 1);
    if (tuples > mostTuples || new Set(places.map((p) => p.variable)).size < places.length)
      leftOut.push(index);
    else drafts.push({ constraint, places, classes: Int32Array.from(presents, (p) => p[0] as number) });
  }
  return {
    variables: [...layout.size.keys()].filter((x) => (groups[x]?.length ?? 0) > 1),
    groups,
    scopes: drafts.map(({ places }) => ({
      variables: places.map((p) => p.variable),
      bits: places.map((p) => Math.log2(p.present.length)),
    })),
    leftOut,
    tabulate: (depth) =>
      drafts.map((d) => {
        const places = [...d.places].sort(
          (a, b) => (depth[a.variable] as number) - (depth[b.variable] as number),
        );
        return tabulate(network, { ...d, places });
      }),
  };
}
