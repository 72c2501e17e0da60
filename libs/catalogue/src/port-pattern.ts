import type { CoverPort } from '@flangewise/model';

/** Ports that are alike and sit evenly on one circle. */
export interface EvenPorts {
  readonly diameterM: number;
  readonly count: number;
  readonly circleM: number;
}

/** Distance of the centres of two ports, each on its own circle [m]. */
export const portDistanceM = (a: CoverPort, b: CoverPort): number => {
  const [r, s] = [a.boltCircleM / 2, b.boltCircleM / 2];
  const apart = ((a.angleDeg - b.angleDeg) * Math.PI) / 180;
  return Math.sqrt(Math.max(0, r ** 2 + s ** 2 - 2 * r * s * Math.cos(apart)));
};

/** Share of the width that two ports take between their centres. */
const share = (a: CoverPort, b: CoverPort): number => (a.diameterM + b.diameterM) / 2 / portDistanceM(a, b);

/** The largest port of each circle, by itself. */
const largestOfCircles = (ports: readonly CoverPort[]): readonly EvenPorts[] => {
  const byCircle = new Map<number, number>();
  for (const { boltCircleM, diameterM } of ports)
    byCircle.set(boltCircleM, Math.max(diameterM, byCircle.get(boltCircleM) ?? 0));
  return [...byCircle].map(([circleM, diameterM]) => ({ diameterM, count: 1, circleM }));
};

/**
 * Even patterns that together weaken a cover just as ports of several sizes on several circles do: the largest port
 * of each circle decides against rim and centre, and a ring of ports that leave the narrowest gap of all pairs
 * decides for the neighbours.
 */
export const evenPatternsOf = (ports: readonly CoverPort[]): readonly EvenPorts[] => {
  const circleM = Math.max(0, ...ports.map((port) => port.boltCircleM));
  if (ports.length === 0) return [{ diameterM: 0, count: 0, circleM }];
  const largest = largestOfCircles(ports);
  if (ports.length < 2) return largest;
  const narrowest = Math.max(
    ...ports.flatMap((port, index) => ports.slice(index + 1).map((other) => share(port, other))),
  );
  const apart = circleM * Math.sin(Math.PI / ports.length);
  return [...largest, { diameterM: narrowest * apart, count: ports.length, circleM }];
};
