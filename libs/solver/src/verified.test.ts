import { expect, it } from 'vitest';
import { compile } from './core.js';
import { verified } from './verified.js';

it('refuses a solution that does not meet a constraint', () => {
  const core = compile({
    variables: [{ id: 'vessel', size: 2, cost: Int32Array.of(3, 4) }],
    constraints: [{ kind: 'table', id: 'fit', scope: [0], allowed: Uint8Array.of(0, 1) }],
  });
  expect(() => verified(core, Int32Array.of(0))).toThrow(/does not meet constraint fit/);
  expect(verified(core, Int32Array.of(1)).cost).toBe(4);
});
