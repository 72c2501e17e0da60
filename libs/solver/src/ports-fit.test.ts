import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { portsFit } from './ports-fit.js';
import { createEngine, type PortsSpec } from './index.js';
import { proved } from './testing/proved.js';

/** One host, users of one part each, and one obstacle: small enough to try every assignment. */
interface Drawn {
  readonly ports: readonly number[];
  readonly parts: readonly { readonly size: number; readonly reaches: boolean }[];
  readonly spare: readonly number[];
  readonly given: readonly number[];
  readonly leaves: readonly (readonly number[])[];
}

const size = fc.integer({ min: 1, max: 4 });
const drawn: fc.Arbitrary<Drawn> = fc
  .record({
    ports: fc.array(size, { maxLength: 5 }),
    parts: fc.array(fc.record({ size, reaches: fc.boolean() }), { maxLength: 4 }),
    spare: fc.array(size, { maxLength: 1 }),
    given: fc.array(fc.integer({ min: 1, max: 4 }), { maxLength: 2 }),
  })
  .chain((rest) =>
    fc
      .array(
        fc.array(fc.integer({ min: 0, max: 4 }), {
          minLength: rest.ports.length,
          maxLength: rest.ports.length,
        }),
        { minLength: 2, maxLength: 2 },
      )
      .map((leaves) => ({ ...rest, leaves })),
  );

/** The giver needs a port of 5, larger than any that it gives; the host has one of 5 for it, and nothing else may need it. */
const giverSize = 5;

const specOf = ({ ports, parts, spare, given, leaves }: Drawn): PortsSpec => ({
  kind: 'ports',
  id: 'ports',
  host: 0,
  hostPorts: [Float64Array.from([...ports, giverSize])],
  users: [
    ...parts.map((part, i) => ({
      variable: i + 2,
      needs: [Float64Array.of(), Float64Array.of(part.size)],
      reaches: Uint8Array.of(0, part.reaches ? 1 : 0),
    })),
    {
      variable: parts.length + 2,
      needs: [Float64Array.of(giverSize)],
      gives: [Float64Array.from(given)],
    },
  ],
  spare: Float64Array.from(spare),
  behind: {
    hostClassOf: Uint16Array.of(0),
    obstacles: [
      {
        variable: 1,
        classOf: Uint16Array.of(0, 1),
        leaves: leaves.map((list) => [Float64Array.from([...list, 0])]),
      },
    ],
  },
});

/** Tries every way of giving each part a port of its own. */
const fitsByTrying = (d: Drawn, obstacle: number, chosen: readonly number[]): boolean => {
  const ports = [
    ...d.ports.map((s, p) => ({ size: s, through: d.leaves[obstacle]?.[p] ?? 0 })),
    ...d.given.map((s) => ({ size: s, through: -1 })),
  ];
  const needs = [
    ...d.parts.filter((_, i) => chosen[i] === 1),
    ...d.spare.map((s) => ({ size: s, reaches: false })),
  ];
  const place = (n: number, free: readonly number[]): boolean => {
    const need = needs[n];
    if (need === undefined) return true;
    return free.some((p) => {
      const port = ports[p];
      if (port === undefined || need.size > port.size) return false;
      if (need.reaches && need.size > port.through) return false;
      return place(
        n + 1,
        free.filter((q) => q !== p),
      );
    });
  };
  return place(0, [...ports.keys()]);
};

const everyChoice = (count: number): number[][] =>
  Array.from({ length: 2 ** count }, (_, bits) => Array.from({ length: count }, (_, i) => (bits >> i) & 1));

describe('ports', () => {
  it('are enough exactly where one of all assignments gives everything a port of its own', () => {
    let refused = 0;
    fc.assert(
      fc.property(drawn, (d) => {
        const spec = specOf(d);
        for (const obstacle of [0, 1])
          for (const chosen of everyChoice(d.parts.length)) {
            const fits = fitsByTrying(d, obstacle, chosen);
            if (!fits) refused++;
            expect(portsFit(spec, Int32Array.of(0, obstacle, ...chosen, 0))).toBe(fits);
          }
      }),
      { numRuns: 300, seed: 5 },
    );
    expect(refused).toBeGreaterThan(100);
  });

  it('are counted by the engine as by trying every assignment', () => {
    fc.assert(
      fc.property(drawn, (d) => {
        const spec = specOf(d);
        const variables = [
          { id: 'host', size: 1 },
          { id: 'obstacle', size: 2 },
          ...d.parts.map((_, i) => ({ id: `part ${String(i)}`, size: 2 })),
          { id: 'giver', size: 1 },
        ];
        const valid = [0, 1].flatMap((obstacle) =>
          everyChoice(d.parts.length).filter((chosen) => fitsByTrying(d, obstacle, chosen)),
        );
        const engine = createEngine({ variables, constraints: [spec] });
        expect(Number(proved(engine.count({})))).toBe(valid.length);
      }),
      { numRuns: 200, seed: 6 },
    );
  });
});
