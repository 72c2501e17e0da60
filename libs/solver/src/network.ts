import { bitCount, lowestBit } from './bits.js';
import type { Constraint } from './constraint.js';
import type { Layout, View } from './layout.js';
import { openState } from './layout.js';

/** Which constraint changed which variable, in order. */
export interface Trace {
  readonly variables: number[];
  readonly constraints: number[];
  /** Constraint that lost its last support; −1: a variable lost its last value. */
  failed: number;
  failedVariable: number;
}

const EFFORTS = 3;

/**
 * Propagation: constraints take turns, cheapest first, until none can remove anything more.
 * `state` is the state being worked on; callers set it, narrow variables through `fix`, `keep` or `remove`, and call `run`.
 */
export class Network {
  state: Uint32Array;
  /** Constraints that take part; all by default. */
  active: Uint8Array;
  /** Failures of each constraint's variables, for the order of the search. */
  readonly failures: Float64Array;
  trace: Trace | null = null;
  private readonly constraintsOf: readonly Int32Array[];
  private readonly queues: Int32Array[];
  private readonly heads = new Int32Array(EFFORTS);
  private readonly lengths = new Int32Array(EFFORTS);
  private readonly queued: Uint8Array;
  private readonly touched: Int32Array;
  private touchedCount = 0;
  private readonly isTouched: Uint8Array;
  /** The constraint that touched the variable, or −1. What one touches is refreshed before the next one runs. */
  private readonly touchedBy: Int32Array;
  private running = -1;
  private readonly scratch: Uint32Array;
  /** By view and class: the word of the domain in which a group of the class was last found. A hint only. */
  private readonly lastFound: readonly Uint16Array[];

  constructor(
    readonly layout: Layout,
    readonly constraints: readonly Constraint[],
  ) {
    const of: Set<number>[] = layout.views.map(() => new Set());
    for (const [index, constraint] of constraints.entries())
      for (const view of constraint.views) of[view]?.add(index);
    this.constraintsOf = of.map((set) => Int32Array.from(set));
    this.queues = Array.from({ length: EFFORTS }, () => new Int32Array(constraints.length + 1));
    this.queued = new Uint8Array(constraints.length);
    this.touched = new Int32Array(layout.variables);
    this.isTouched = new Uint8Array(layout.variables);
    this.touchedBy = new Int32Array(layout.variables);
    this.active = new Uint8Array(constraints.length).fill(1);
    this.failures = new Float64Array(layout.variables).fill(1);
    this.scratch = new Uint32Array(Math.max(1, ...layout.views.map((v) => v.words)));
    this.lastFound = layout.views.map((v) => new Uint16Array(v.isDomain ? 0 : v.count));
    this.state = openState(layout);
  }

  view(id: number): View {
    return this.layout.views[id] as View;
  }

  isSettled(constraint: number): boolean {
    const word = this.state[this.layout.settledOffset + (constraint >>> 5)] as number;
    return ((word >>> (constraint & 31)) & 1) === 1;
  }

  /** Called by a running constraint that every remaining combination meets. */
  settle(): void {
    const at = this.layout.settledOffset + (this.running >>> 5);
    this.state[at] = (this.state[at] as number) | (1 << (this.running & 31));
  }

  /** Leaves one group in a domain. */
  fix(variable: number, group: number): void {
    const start = this.layout.domain[variable] as number;
    this.state.fill(0, start, this.layout.domain[variable + 1]);
    this.state[start + (group >>> 5)] = 1 << (group & 31);
    this.touch(variable);
  }

  /** Takes one group out of a domain. */
  drop(variable: number, group: number): void {
    const at = (this.layout.domain[variable] as number) + (group >>> 5);
    this.state[at] = (this.state[at] as number) & ~(1 << (group & 31));
    this.touch(variable);
  }

  touch(variable: number): void {
    if (this.isTouched[variable] === 1) return;
    this.isTouched[variable] = 1;
    this.touchedBy[variable] = this.running;
    this.touched[this.touchedCount++] = variable;
  }

  /**
   * Called by constraints: keeps only the classes of a view that are in `supported`.
   * @returns whether that removed any
   */
  keep(viewId: number, supported: Uint32Array): boolean {
    const view = this.view(viewId);
    const { state } = this;
    let changed = false;
    for (let w = 0; w < view.words; w++) {
      const at = view.offset + w;
      let gone = (state[at] as number) & ~(supported[w] as number);
      if (gone === 0) continue;
      changed = true;
      state[at] = (state[at] as number) & (supported[w] as number);
      if (view.isDomain) continue;
      for (; gone !== 0; gone &= gone - 1) {
        const mask = ((w << 5) + lowestBit(gone)) * view.domainWords;
        for (let d = 0; d < view.domainWords; d++) {
          const domain = view.domainOffset + d;
          state[domain] = (state[domain] as number) & ~(view.masks[mask + d] as number);
        }
      }
    }
    if (!changed) return false;
    if (this.trace) {
      this.trace.variables.push(view.variable);
      this.trace.constraints.push(this.running);
    }
    this.touch(view.variable);
    if (!view.isDomain) this.enqueueAll(viewId, this.running);
    return true;
  }

  enqueueEverything(): void {
    for (let x = 0; x < this.layout.variables; x++) this.touch(x);
    for (let c = 0; c < this.constraints.length; c++) this.enqueue(c);
  }

  /** Propagates to the end. @returns false where the state admits nothing */
  run(): boolean {
    for (;;) {
      while (this.touchedCount > 0) {
        const variable = this.touched[--this.touchedCount] as number;
        this.isTouched[variable] = 0;
        if (!this.refresh(variable)) return this.fail(-1, variable);
      }
      const next = this.dequeue();
      if (next < 0) return true;
      if (this.isSettled(next)) continue;
      this.running = next;
      const consistent = (this.constraints[next] as Constraint).propagate(this);
      this.running = -1;
      if (!consistent) return this.fail(next, -1);
    }
  }

  private fail(constraint: number, variable: number): false {
    if (this.trace) {
      this.trace.failed = constraint;
      this.trace.failedVariable = variable;
    }
    if (variable >= 0) this.countFailure(variable);
    else
      for (const view of (this.constraints[constraint] as Constraint).views)
        this.countFailure(this.view(view).variable);
    while (this.touchedCount > 0) this.isTouched[this.touched[--this.touchedCount] as number] = 0;
    while (this.dequeue() >= 0);
    return false;
  }

  private countFailure(variable: number): void {
    this.failures[variable] = (this.failures[variable] as number) + 1;
  }

  /** Brings the views of a variable up to its domain, and wakes the constraints that see a change. */
  private refresh(variable: number): boolean {
    const { state, layout } = this;
    const end = layout.domain[variable + 1] as number;
    let groups = 0;
    for (let w = layout.domain[variable] as number; w < end; w++) groups += bitCount(state[w] as number);
    if (groups === 0) return false;
    for (const id of layout.viewsOf[variable] as Int32Array) {
      const view = layout.views[id] as View;
      if (view.isDomain) this.enqueueAll(id, this.touchedBy[variable] as number);
      else if (groups < view.count ? this.refreshByGroups(view) : this.refreshByClasses(view, id))
        this.enqueueAll(id, -1);
    }
    return true;
  }

  /** For few groups: collects their classes. @returns whether a class is gone */
  private refreshByGroups(view: View): boolean {
    const { state, scratch } = this;
    const { classOf, domainOffset, domainWords } = view;
    scratch.fill(0, 0, view.words);
    for (let w = 0; w < domainWords; w++)
      for (let word = state[domainOffset + w] as number; word !== 0; word &= word - 1) {
        const c = classOf[(w << 5) + lowestBit(word)] as number;
        scratch[c >>> 5] = (scratch[c >>> 5] as number) | (1 << (c & 31));
      }
    let changed = false;
    for (let w = 0; w < view.words; w++)
      if (state[view.offset + w] !== scratch[w]) {
        state[view.offset + w] = scratch[w] as number;
        changed = true;
      }
    return changed;
  }

  /** For many groups: looks for a group of each class, first where one was found last. @returns whether a class is gone */
  private refreshByClasses(view: View, id: number): boolean {
    const { state } = this;
    const { masks, domainOffset, domainWords } = view;
    const lastFound = this.lastFound[id] as Uint16Array;
    let changed = false;
    for (let w = 0; w < view.words; w++) {
      const at = view.offset + w;
      for (let word = state[at] as number; word !== 0; word &= word - 1) {
        const bit = lowestBit(word);
        const c = (w << 5) + bit;
        const mask = c * domainWords;
        let d = lastFound[c] as number;
        if (((state[domainOffset + d] as number) & (masks[mask + d] as number)) !== 0) continue;
        d = 0;
        while (d < domainWords && ((state[domainOffset + d] as number) & (masks[mask + d] as number)) === 0)
          d++;
        if (d < domainWords) {
          lastFound[c] = d;
          continue;
        }
        state[at] = (state[at] as number) & ~(1 << bit);
        changed = true;
      }
    }
    return changed;
  }

  private enqueueAll(view: number, except: number): void {
    for (const constraint of this.constraintsOf[view] as Int32Array)
      if (constraint !== except) this.enqueue(constraint);
  }

  private enqueue(constraint: number): void {
    if (this.queued[constraint] === 1 || this.active[constraint] === 0) return;
    this.queued[constraint] = 1;
    const { effort } = this.constraints[constraint] as Constraint;
    const queue = this.queues[effort] as Int32Array;
    const tail = (this.heads[effort] as number) + (this.lengths[effort] as number);
    queue[tail % queue.length] = constraint;
    this.lengths[effort] = (this.lengths[effort] as number) + 1;
  }

  private dequeue(): number {
    for (let effort = 0; effort < EFFORTS; effort++) {
      if (this.lengths[effort] === 0) continue;
      const queue = this.queues[effort] as Int32Array;
      const head = this.heads[effort] as number;
      const constraint = queue[head] as number;
      this.heads[effort] = (head + 1) % queue.length;
      this.lengths[effort] = (this.lengths[effort] as number) - 1;
      this.queued[constraint] = 0;
      return constraint;
    }
    return -1;
  }
}
