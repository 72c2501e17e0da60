import fc from 'fast-check';
import { expect, it } from 'vitest';
import { compile } from './core.js';
import { allowChoices, enter } from './question.js';
import { anyCase } from './testing/random-problem.js';

it('propagates to the end: asked once more, no constraint removes anything', () => {
  fc.assert(
    fc.property(anyCase, ({ problem, choices }) => {
      const core = compile(problem);
      const state = enter(core, allowChoices(core, choices));
      if (!state) return;
      const { network } = core;
      network.state = Uint32Array.from(state);
      network.enqueueEverything();
      expect(network.run()).toBe(true);
      expect(network.state.slice(0, core.layout.settledOffset)).toEqual(
        state.slice(0, core.layout.settledOffset),
      );
    }),
    { numRuns: 500, endOnFailure: true },
  );
});
