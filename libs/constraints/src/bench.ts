import type { System } from '@flangewise/model';
import { type Compiled, type Compiler, createCompiler } from './compile.js';
import { conditionsOf } from './conditions-of.js';
import type { Range } from './range.js';
import type { Rule } from './rule.js';

/** A range, the rules in force, and the compiler that keeps their tables. */
export interface Bench {
  readonly range: Range;
  readonly rules: readonly Rule[];
  readonly compiler: Compiler;
}

export const createBench = (range: Range, rules: readonly Rule[]): Bench => ({
  range,
  rules,
  compiler: createCompiler(range, rules),
});

/** The engine for a system: its inquiry as conditions, none of its choices yet. */
export const compileFor = (system: System, bench: Bench): Compiled =>
  bench.compiler.compile(
    system.sets.map((_, set) => conditionsOf(system, set)),
    system.sets.map((set) => set.count),
  );
