import { init, type Model } from 'z3-solver';
import type { BooleanEncoding } from './boolean-encoding.js';
import type { Peer, PeerMaker } from './peer.js';

const literal = (l: number): string => (l < 0 ? `(not v${String(-l)})` : `v${String(l)}`);

/** The problem in SMT-LIB. */
function smt({ count, clauses, sums }: BooleanEncoding): string[] {
  const lines = Array.from({ length: count }, (_, i) => `(declare-const v${String(i + 1)} Bool)`);
  for (const clause of clauses)
    lines.push(clause.length === 0 ? '(assert false)' : `(assert (or ${clause.map(literal).join(' ')}))`);
  for (const { literals, weights, most } of sums)
    if (literals.length > 0)
      lines.push(
        `(assert ((_ pble ${String(most)} ${weights.join(' ')}) ${literals.map(literal).join(' ')}))`,
      );
  return lines;
}

/** Z3 compiled to WebAssembly. */
export const z3Peer: PeerMaker = async (encoding) => {
  const { Context, em } = await init();
  const { Solver, Optimize, Bool } = Context('main');
  const { chosen, costs } = encoding;
  const solver = new Solver();
  solver.fromString(smt(encoding).join('\n'));
  const literals = chosen.flat();
  const prices = costs.flat();
  const booleans = new Map(literals.map((l) => [l, Bool.const(literal(l))]));
  const trueOf = (model: Model): Set<number> =>
    new Set([...booleans].filter(([, b]) => model.eval(b).toString() === 'true').map(([l]) => l));
  const peer: Peer = {
    solve: async (assumed) => {
      const answer = await solver.check(
        ...assumed.map((l) => booleans.get(l) as ReturnType<typeof Bool.const>),
      );
      if (answer === 'unknown') throw new Error('z3 gave up');
      if (answer === 'unsat') return null;
      return trueOf(solver.model());
    },
    least: async () => {
      const optimize = new Optimize();
      const terms = literals.map((l, i) => `(ite ${literal(l)} ${String(prices[i])} 0)`);
      optimize.fromString([...smt(encoding), `(minimize (+ ${terms.join(' ')}))`].join('\n'));
      if ((await optimize.check()) !== 'sat') return null;
      const shown = trueOf(optimize.model());
      return literals.reduce((sum, l, i) => sum + (shown.has(l) ? (prices[i] as number) : 0), 0);
    },
    close: () => {
      (em as { PThread?: { terminateAllThreads(): void } }).PThread?.terminateAllThreads();
    },
  };
  return peer;
};
