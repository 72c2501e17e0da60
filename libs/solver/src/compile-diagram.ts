import type { AndOrDiagram } from './and-or-diagram.js';
import type { Layer } from './decision-diagram.js';
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
  /** Give up beyond this many nodes. */
  readonly mostNodes: number;
  /** Leave constraints out that have more combinations of classes than this. */
  readonly mostTuples: number;
}

/** A diagram of the solutions of a state, but for the constraints it leaves out. */
export interface SolverDiagram {
  readonly diagram: AndOrDiagram;
  /** 1 for variables that have nodes; the others are fixed. */
  readonly covers: Uint8Array;
  readonly leftOut: LeftOut;
}

/** A relation that a variable steps through: its layer, and the class of each group there. */
interface Step {
  readonly relation: number;
  readonly layer: Layer;
  readonly isFirst: boolean;
  readonly isLast: boolean;
  readonly classOf: Int32Array;
}

/** A relation that begins above a variable and ends in or below it: where its walk stands tells the subproblems apart. */
interface Crossing {
  readonly relation: number;
  readonly nodes: number;
}

interface Site {
  readonly steps: readonly Step[];
  readonly crossings: readonly Crossing[];
  readonly memo: Map<number | string, number>;
  /** Whether the states of the crossings fit into one exact number. */
  readonly isNumeric: boolean;
  readonly groups: readonly number[];
}

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
        isLast: p === last,
        classOf: classOf[p] as Int32Array,
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
    const isNumeric = crossing.reduce((product, c) => product * c.nodes, 1) < Number.MAX_SAFE_INTEGER;
    return { steps: own, crossings: crossing, memo: new Map(), isNumeric, groups: groupsOf(x) };
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
/** More nodes than allowed. */
const TOO_MANY = -2;

class Compilation {
  private readonly builder = new DiagramBuilder();
  /** Where the walk through each relation stands. */
  private readonly at: Int32Array;

  constructor(
    private readonly tree: EliminationTree,
    private readonly sites: readonly Site[],
    private readonly run: { relations: number; mostNodes: number; meter: Ticker },
  ) {
    this.at = new Int32Array(run.relations);
  }

  compile(): AndOrDiagram | null {
    const roots: number[] = [];
    for (const root of this.tree.roots) {
      const node = this.node(root);
      if (node === TOO_MANY) return null;
      // A node without edges stands for a tree of variables that nothing meets.
      roots.push(node === DEAD ? this.builder.add(root, []) : node);
    }
    return this.builder.finish(roots);
  }

  private key({ crossings, isNumeric }: Site): number | string {
    if (isNumeric) {
      let key = 0;
      for (const { relation, nodes } of crossings) key = key * nodes + (this.at[relation] as number);
      return key;
    }
    return crossings.map((c) => this.at[c.relation]).join();
  }

  /** The node of a variable under the present walks. @returns its number, DEAD or TOO_MANY */
  private node(x: number): number {
    const site = this.sites[x] as Site;
    const key = this.key(site);
    const known = site.memo.get(key);
    if (known !== undefined) return known;
    this.run.meter.check();
    if (this.builder.variable.length >= this.run.mostNodes) return TOO_MANY;
    const before = site.steps.map((s) => this.at[s.relation] as number);
    const edges = new Map<string, { groups: number[]; below: number[] }>();
    for (const groups of this.alike(site)) {
      this.advance(site, before, groups[0] as number);
      const below = this.nodesBelow(x);
      if (below === TOO_MANY) return TOO_MANY;
      if (below === DEAD) continue;
      const name = below.join();
      const edge = edges.get(name);
      if (edge) edge.groups.push(...groups);
      else edges.set(name, { groups, below });
    }
    for (const [i, step] of site.steps.entries()) this.at[step.relation] = before[i] as number;
    const number = edges.size === 0 ? DEAD : this.builder.add(x, edges.values());
    site.memo.set(key, number);
    return number;
  }

  private nodesBelow(x: number): number[] | typeof DEAD | typeof TOO_MANY {
    const below: number[] = [];
    for (const child of this.tree.children[x] as readonly number[]) {
      const node = this.node(child);
      if (node === DEAD || node === TOO_MANY) return node;
      below.push(node);
    }
    return below;
  }

  /** Where a group leads in one relation; −1: nowhere. */
  private next(step: Step, group: number): number {
    const from = step.isFirst ? 0 : (this.at[step.relation] as number);
    return step.layer.next[from * step.layer.classes + (step.classOf[group] as number)] as number;
  }

  private advance(site: Site, before: readonly number[], group: number): void {
    for (const [i, step] of site.steps.entries()) this.at[step.relation] = before[i] as number;
    for (const step of site.steps) this.at[step.relation] = this.next(step, group);
  }

  /** The groups that no step refuses, put together where all steps lead to the same places. */
  private alike(site: Site): Iterable<number[]> {
    const byPlace = new Map<string, number[]>();
    for (const group of site.groups) {
      let place = '';
      let isRefused = false;
      for (const step of site.steps) {
        const next = this.next(step, group);
        if (next < 0) {
          isRefused = true;
          break;
        }
        place += `${String(next)},`;
      }
      if (isRefused) continue;
      const list = byPlace.get(place);
      if (list) list.push(group);
      else byPlace.set(place, [group]);
    }
    return byPlace.values();
  }
}

/** Compiles the constraints of a state into a diagram; null where that takes too many nodes. */
export function compileDiagram(task: CompileTask, meter: Ticker): SolverDiagram | null {
  const { network, state, mostNodes } = task;
  network.state = state;
  const open = openRelations(network, task.mostTuples, task.among);
  const weight = Float64Array.from(network.layout.size, (_, x) => Math.log2(open.groups[x]?.length ?? 1));
  const tree = eliminationTree(open.variables, open.scopes, weight);
  const relations = open.tabulate(tree.depth);
  const sites = sitesOf(tree, relations, (x) => open.groups[x] ?? []);
  const diagram = new Compilation(tree, sites, { relations: relations.length, mostNodes, meter }).compile();
  const covers = new Uint8Array(network.layout.variables);
  for (const x of open.variables) covers[x] = 1;
  return diagram && { diagram, covers, leftOut: new LeftOut(network, open.leftOut) };
}
