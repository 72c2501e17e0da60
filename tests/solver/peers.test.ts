import { createEngine, type Answer } from '@flangewise/solver';
import { afterAll, describe, expect, it } from 'vitest';
import { encode } from '../bench/engine/boolean-encoding.js';
import type { SizeName } from '../bench/engine/catalogue.js';
import { logicPeer } from '../bench/engine/logic-peer.js';
import { makeProblem, type ShapeName } from '../bench/engine/make-problem.js';
import { type Peer, type PeerMaker, validBy } from '../bench/engine/peer.js';
import { firstEdits } from '../bench/engine/walk.js';
import { z3Peer } from '../bench/engine/z3-peer.js';

const proved = <T>(answer: Answer<T>): T => {
  if (answer.status !== 'proved') throw new Error(`not proved: ${answer.reason}`);
  return answer.value;
};

const open: Peer[] = [];
afterAll(() => {
  for (const peer of open) peer.close();
});

// Seeds drawn anew at every run, beside the fixed ones.
const drawn = Math.floor(Math.random() * 1e6);
console.log(`seed drawn: ${String(drawn)}`);

const cases: [SizeName, ShapeName, number][] = [
  ['S', 'plain', 1],
  ['S', 'plain', drawn],
  ['S', 'full', 1],
  ['M', 'plain', 1],
];

describe.each(cases)('%s, %s, seed %i', (size, shape, seed) => {
  const problem = makeProblem(size, seed, shape);
  const engine = createEngine(problem);
  const encoding = encode(problem);
  const load = async (make: PeerMaker): Promise<Peer> => {
    const peer = await make(encoding);
    open.push(peer);
    return peer;
  };

  it('has the valid values that logic-solver finds, after some edits', async () => {
    const peer = await load(logicPeer);
    for (const edits of size === 'M' ? [8] : [1, 4]) {
      const choices = firstEdits(engine, seed, edits);
      expect(proved(engine.narrow({ choices })).valid).toEqual(await validBy(peer, encoding, choices));
    }
  });

  if (size !== 'S' || shape !== 'plain') return;
  it('has the optimum and the valid values that z3 finds', async () => {
    const peer = await load(z3Peer);
    const best = proved(engine.best({ objective: { kind: 'cost' } }));
    if (best === 'impossible') throw new Error('solutions are planted');
    expect(best.cost).toBe(await peer.least());
    const choices = firstEdits(engine, seed, 5);
    expect(proved(engine.narrow({ choices })).valid).toEqual(await validBy(peer, encoding, choices));
  });
});
