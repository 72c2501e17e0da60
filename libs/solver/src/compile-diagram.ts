import type { AndOrDiagram } from './and-or-diagram.js';
import type { Layer } from './decision-diagram.js';
import { DiagramReach } from './diagram-reach.js';
import { DiagramSweep } from './diagram-sweep.js';
import type { EliminationTree } from './elimination-tree.js';
import { eliminationTree } from './elimination-tree.js';
import { LeftOut } from './left-out.js';
import type { Ticker } from './meter.js';
import type { Network } from './network.js';
import type { Relation } from './relation.js';
import { openRelations } from './relation.js';

export interface CompileTask {
  readonly network: Network;
  /** Propagated. */
  readonly state: Uint32Array;
  /** Only the variables of one component; all by default. */
  readonly among?: ReadonlySet<number>;
  /** Give up beyond this many groups looked at, over all nodes; the same place on every machine. */
  readonly mostWork: number;
  /** Leave constraints out that have more combinations of classes than this. */
  readonly mostTuples: number;
}

/** A diagram of the solutions of a state, but for the constraints it leaves out. */
export interface SolverDiagram {
  readonly diagram: AndOrDiagram;
  /** 1 for variables that have nodes; the others are fixed. */
  readonly covers: Uint8Array;
  readonly leftOut: LeftOut;
  readonly reach: DiagramReach;
  readonly sweep: DiagramSweep;
}

/** A relation that a variable steps through: its layer, and the class of each group there. */
interface Step {
  readonly relation: number;
  readonly layer: Layer;
  readonly isFirst: boolean;
  /** Nodes that it may lead to; 1 where the relation ends. */
  readonly targets: number;
  /** Class of each group of the site. */
  readonly classOf: Int32Array;
}

/** A relation that begins above a variable and ends in or below it: where its walk stands tells the subproblems apart. */
interface Crossing {
  readonly relation: number;
  readonly nodes: number;
}

type Key = number | string;

interface Site {
  readonly steps: readonly Step[];
  readonly crossings: readonly Crossing[];
  readonly memo: Map<Key, number>;
  /** Nodes by what they consist of. */
  readonly unique: Map<string, number>;
  /** Whether the states of the crossings, and the targets of the steps, fit into one exact number. */
  readonly hasNumericKey: boolean;
  readonly hasNumericPlace: boolean;
  readonly groups: readonly number[];
}

const fits = (counts: readonly number[]): boolean =>
  counts.reduce((product, n) => product * n, 1) < Number.MAX_SAFE_INTEGER;

function sitesOf(
  tree: EliminationTree,
  relations: readonly Relation[],
  groupsOf: (x: number) => readonly number[],
): Site[] {
  const total = tree.parent.length;
  const steps: Step[][] = Array.from({ length: total }, () => []);
  const crossings: Crossing[][] = Array.from({ length: total }, () => []);
  for (const [index, { variables, classOf, diagram }] of relations.entries()) {
    const last = variables.length - 1;
    for (const [p, x] of variables.entries())
      steps[x]?.push({
        relation: index,
        layer: diagram.layers[p] as Layer,
        isFirst: p === 0,
        targets: p === last ? 1 : (diagram.layers[p + 1] as Layer).nodes,
        classOf: Int32Array.from(groupsOf(x), (g) => classOf[p]?.[g] as number),
      });
    // From the last variable up to, but without, the first, the walk is under way.
    let p = last;
    for (let x = variables[last] as number; x !== variables[0]; x = tree.parent[x] as number) {
      if (variables[p - 1] === x) p--;
      crossings[x]?.push({ relation: index, nodes: (diagram.layers[p] as Layer).nodes });
    }
  }
  return steps.map((own, x) => {
    const crossing = crossings[x] as Crossing[];
    return {
      ...{ steps: own, crossings: crossing, groups: groupsOf(x), memo: new Map(), unique: new Map() },
      hasNumericKey: fits(crossing.map((c) => c.nodes)),
      hasNumericPlace: fits(own.map((step) => step.targets)),
    };
  });
}

/** Collects nodes and edges while they are found. */
class DiagramBuilder {
  readonly variable: number[] = [];
  private readonly firstEdge: number[] = [0];
  private readonly firstGroup: number[] = [0];
  private readonly groups: number[] = [];
  private readonly firstBelow: number[] = [0];
  private readonly below: number[] = [];

  add(variable: number, edges: Iterable<{ groups: number[]; below: number[] }>): number {
    for (const { groups, below } of edges) {
      for (const g of groups) this.groups.push(g);
      for (const n of below) this.below.push(n);
      this.firstGroup.push(this.groups.length);
      this.firstBelow.push(this.below.length);
    }
    this.firstEdge.push(this.firstGroup.length - 1);
    this.variable.push(variable);
    return this.variable.length - 1;
  }

  finish(roots: number[]): AndOrDiagram {
    return {
      variable: Int32Array.from(this.variable),
      firstEdge: Int32Array.from(this.firstEdge),
      firstGroup: Int32Array.from(this.firstGroup),
      groups: Int32Array.from(this.groups),
      firstBelow: Int32Array.from(this.firstBelow),
      below: Int32Array.from(this.below),
      roots: Int32Array.from(roots),
    };
  }
}

/** Nothing can be met below. */
const DEAD = -1;
/** More work than allowed. */
const TOO_MUCH = -2;
/** More nodes than a diagram has; two of their numbers fit into one exact number. */
const NODES = 2 ** 26;

/** A key for the nodes below an edge. */
function keyOfBelow(below: readonly number[]): Key {
  if (below.length > 2) return below.join();
  let key = 0;
  for (const node of below) key = key * NODES + node;
  return key;
}

class Compilation {
  private readonly builder = new DiagramBuilder();
  /** Where the walk through each relation stands. */
  private readonly at: Int32Array;
  private work = 0;

  constructor(
    private readonly tree: EliminationTree,
    private readonly sites: readonly Site[],
    private readonly run: { relations: number; mostWork: number; meter: Ticker },
  ) {
    this.at = new Int32Array(run.relations);
  }

  compile(): AndOrDiagram | null {
    const roots: number[] = [];
    for (const root of this.tree.roots) {
      const node = this.node(root);
      if (node === TOO_MUCH) return null;
      // A node without edges stands for a tree of variables that nothing meets.
      roots.push(node === DEAD ? this.builder.add(root, []) : node);
    }
    return this.builder.finish(roots);
  }

  private key({ crossings, hasNumericKey }: Site): Key {
    if (!hasNumericKey) return crossings.map((c) => this.at[c.relation]).join();
    let key = 0;
    for (let i = 0; i < crossings.length; i++) {
      const { relation, nodes } = crossings[i] as Crossing;
      key = key * nodes + (this.at[relation] as number);
    }
    return key;
  }

  /** The node of a variable under the present walks. @returns its number, DEAD or TOO_MUCH */
  private node(x: number): number {
    const site = this.sites[x] as Site;
    const key = this.key(site);
    const known = site.memo.get(key);
    if (known !== undefined) return known;
    this.run.meter.check();
    this.work += site.groups.length;
    if (this.work > this.run.mostWork) return TOO_MUCH;
    const { steps } = site;
    const before = new Int32Array(steps.length);
    for (let s = 0; s < steps.length; s++) before[s] = this.at[(steps[s] as Step).relation] as number;
    const edges = new Map<Key, { groups: number[]; below: number[] }>();
    for (const alike of this.alike(site, before)) {
      const first = alike[0] as number;
      for (let s = 0; s < steps.length; s++) {
        const step = steps[s] as Step;
        this.at[step.relation] = this.next(step, before[s] as number, first);
      }
      const below = this.nodesBelow(x);
      if (below === TOO_MUCH) return TOO_MUCH;
      if (below === DEAD) continue;
      const name = keyOfBelow(below);
      const groups = alike.map((i) => site.groups[i] as number);
      const edge = edges.get(name);
      if (edge) edge.groups.push(...groups);
      else edges.set(name, { groups, below });
    }
    for (let s = 0; s < steps.length; s++) this.at[(steps[s] as Step).relation] = before[s] as number;
    const number = edges.size === 0 ? DEAD : this.unique(x, edges);
    site.memo.set(key, number);
    return number;
  }

  /** A node of the same edges if there is one, else a new one. */
  private unique(x: number, edges: ReadonlyMap<Key, { groups: number[]; below: number[] }>): number {
    const { unique } = this.sites[x] as Site;
    let text = '';
    for (const [name, { groups }] of edges) text += `${String(name)}:${groups.join()};`;
    const known = unique.get(text);
    if (known !== undefined) return known;
    const number = this.builder.add(x, edges.values());
    unique.set(text, number);
    return number;
  }

  private nodesBelow(x: number): number[] | typeof DEAD | typeof TOO_MUCH {
    const below: number[] = [];
    for (const child of this.tree.children[x] as readonly number[]) {
      const node = this.node(child);
      if (node === DEAD || node === TOO_MUCH) return node;
      below.push(node);
    }
    return below;
  }

  /** Where a group (by its place in the site) leads in one relation; −1: nowhere. */
  private next(step: Step, before: number, group: number): number {
    const from = step.isFirst ? 0 : before;
    return step.layer.next[from * step.layer.classes + (step.classOf[group] as number)] as number;
  }

  /** The groups that no step refuses, put together where all steps lead to the same places. */
  private alike(site: Site, before: Int32Array): Iterable<number[]> {
    const { steps, hasNumericPlace } = site;
    const byPlace = new Map<Key, number[]>();
    for (let group = 0; group < site.groups.length; group++) {
      let place: Key = hasNumericPlace ? 0 : '';
      let isRefused = false;
      for (let s = 0; s < steps.length; s++) {
        const step = steps[s] as Step;
        const next = this.next(step, before[s] as number, group);
        if (next < 0) {
          isRefused = true;
          break;
        }
        place = typeof place === 'number' ? place * step.targets + next : `${place}${String(next)},`;
      }
      if (isRefused) continue;
      const list = byPlace.get(place);
      if (list) list.push(group);
      else byPlace.set(place, [group]);
    }
    return byPlace.values();
  }
}

/** Variables times relations beyond which not even a tree is sought. */
const MOST_PLACES = 200_000;

/** Compiles the constraints of a state into a diagram; null where that takes too much work. */
export function compileDiagram(task: CompileTask, meter: Ticker): SolverDiagram | null {
  const { network, state, mostWork } = task;
  network.state = state;
  const open = openRelations(network, task.mostTuples, task.among);
  if (open.variables.length * open.scopes.length > MOST_PLACES) return null;
  const weight = Float64Array.from(network.layout.size, (_, x) => Math.log2(open.groups[x]?.length ?? 1));
  const tree = eliminationTree(open.variables, open.scopes, weight);
  const relations = open.tabulate(tree.depth);
  const sites = sitesOf(tree, relations, (x) => open.groups[x] ?? []);
  const diagram = new Compilation(tree, sites, { relations: relations.length, mostWork, meter }).compile();
  const covers = new Uint8Array(network.layout.variables);
  for (const x of open.variables) covers[x] = 1;
  if (!diagram) return null;
  return {
    ...{ diagram, covers, leftOut: new LeftOut(network, open.leftOut) },
    reach: new DiagramReach(diagram, network.layout),
    sweep: new DiagramSweep(diagram, network.layout),
  };
}
