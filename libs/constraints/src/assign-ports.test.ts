import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assignPorts, type OpenPort, type PortUser, takes } from './assign-ports.js';

const millimetres = fc.constantFrom(6, 10, 14, 20).map((size) => size / 1000);

const ports: fc.Arbitrary<readonly OpenPort[]> = fc
  .array(fc.record({ diameterM: millimetres, throughM: fc.oneof(millimetres, fc.constant(0)) }), {
    maxLength: 6,
  })
  .map((list) =>
    list.map(({ diameterM, throughM }, i) => ({
      name: `N${String(i + 1)}`,
      diameterM,
      throughM: Math.min(diameterM, throughM),
    })),
  );

const users: fc.Arbitrary<readonly PortUser[]> = fc
  .array(fc.record({ sizeM: millimetres, reachesDown: fc.boolean() }), { maxLength: 5 })
  .map((list) => list.map((user, i) => ({ slot: 'charging', name: `part ${String(i)}`, ...user })));

/** The most users that find a port of their own, by trying every way. */
const mostPlaced = (free: readonly OpenPort[], left: readonly PortUser[]): number => {
  const [user, ...others] = left;
  if (user === undefined) return 0;
  const without = mostPlaced(free, others);
  return free.reduce(
    (most, port) =>
      takes(port, user)
        ? Math.max(
            most,
            1 +
              mostPlaced(
                free.filter((other) => other !== port),
                others,
              ),
          )
        : most,
    without,
  );
};

describe('who sits where', () => {
  it('places as many as any assignment can, each on a port that takes it', () => {
    let refused = 0;
    fc.assert(
      fc.property(ports, users, (cover, parts) => {
        const { placed, unplaced, free } = assignPorts(cover, parts);
        expect(placed.length).toBe(mostPlaced(cover, parts));
        expect([...placed.map((seat) => seat.user), ...unplaced].length).toBe(parts.length);
        expect(new Set([...placed.map((seat) => seat.port), ...free.map((port) => port.name)]).size).toBe(
          cover.length,
        );
        for (const { port, user } of placed)
          expect(
            takes(
              cover.find((one) => one.name === port)!,
              user,
            ),
          ).toBe(true);
        refused += unplaced.length;
      }),
      { numRuns: 500, seed: 3 },
    );
    expect(refused).toBeGreaterThan(100);
  });

  it('leaves the large ports and the clear ones to those that need them', () => {
    const cover = [
      { name: 'N1', diameterM: 0.01, throughM: 0.01 },
      { name: 'N2', diameterM: 0.01, throughM: 0 },
      { name: 'N3', diameterM: 0.014, throughM: 0 },
    ];
    const part = (name: string, sizeM: number, reachesDown = false): PortUser => ({
      slot: 'charging',
      name,
      sizeM,
      reachesDown,
    });
    const { placed } = assignPorts(cover, [
      part('gauge', 0.006),
      part('well', 0.01, true),
      part('disc', 0.014),
    ]);
    expect(placed.map(({ port, user }) => `${port} ${user.name}`)).toEqual([
      'N1 well',
      'N2 gauge',
      'N3 disc',
    ]);
  });

  it('names the ports of a piece after the port that it sits on', () => {
    const cover = [{ name: 'N1', diameterM: 0.02, throughM: 0.02 }];
    const piece: PortUser = {
      slot: 'portPiece',
      name: 'piece',
      sizeM: 0.02,
      reachesDown: false,
      givesM: [0.014, 0.01, 0.006],
    };
    const disc: PortUser = { slot: 'relief', name: 'disc', sizeM: 0.01, reachesDown: false };
    const { placed, free } = assignPorts(cover, [disc, piece]);
    expect(placed.map(({ port, user }) => `${port} ${user.name}`)).toEqual(['N1 piece', 'N1b disc']);
    expect(free.map(({ name }) => name)).toEqual(['N1c', 'N1a']);
  });
});
