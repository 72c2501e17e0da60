import Logic from 'logic-solver';
import type { Peer, PeerMaker } from './peer.js';

const name = (literal: number): string => (literal < 0 ? `-v${String(-literal)}` : `v${String(literal)}`);

/** logic-solver: MiniSat compiled to JavaScript. */
export const logicPeer: PeerMaker = (encoding) => {
  const { clauses, sums, chosen, costs } = encoding;
  const solver = new Logic.Solver();
  for (const clause of clauses) solver.require(Logic.or(clause.map(name)));
  for (const { literals, weights, most } of sums)
    solver.require(
      Logic.lessThanOrEqual(Logic.weightedSum(literals.map(name), [...weights]), Logic.constantBits(most)),
    );
  const decode = (solution: Logic.Solution): Set<number> =>
    new Set(solution.getTrueVars().map((own) => Number(own.slice(1))));
  const peer: Peer = {
    solve: (assumed) => {
      const solution =
        assumed.length === 0 ? solver.solve() : solver.solveAssuming(Logic.and(assumed.map(name)));
      return Promise.resolve(solution && decode(solution));
    },
    least: () => {
      const first = solver.solve();
      if (!first) return Promise.resolve(null);
      const literals = chosen.flat();
      const prices = costs.flat();
      const best = solver.minimizeWeightedSum(first, literals.map(name), prices);
      const shown = decode(best);
      return Promise.resolve(
        literals.reduce((sum, l, i) => sum + (shown.has(l) ? (prices[i] as number) : 0), 0),
      );
    },
    close: () => undefined,
  };
  return Promise.resolve(peer);
};
