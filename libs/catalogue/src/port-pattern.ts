import type { CoverPort } from '@flangewise/model';

/** Ports that are alike and sit evenly on one circle. */
export interface EvenPorts {
  readonly diameterM: number;
  readonly count: number;
  readonly circleM: number;
}

/** Distance of the centres of two ports on one circle [m]. */
export const portDistanceM = (a: CoverPort, b: CoverPort): number =>
  a.boltCircleM * Math.abs(Math.sin(((a.angleDeg - b.angleDeg) * Math.PI) / 360));

/** Share of the width that two ports take between their centres. */
const share = (a: CoverPort, b: CoverPort): number => (a.diameterM + b.diameterM) / 2 / portDistanceM(a, b);

/**
 * Even patterns that together weaken a cover just as ports of several sizes on one circle do: the largest port
 * alone decides against rim and centre, and a ring of ports that leave the narrowest gap between neighbours
 * decides for the neighbours.
 */
export const evenPatternsOf = (ports: readonly CoverPort[]): readonly EvenPorts[] => {
  const circleM = Math.max(0, ...ports.map((port) => port.boltCircleM));
  const largest = {
    diameterM: Math.max(0, ...ports.map((port) => port.diameterM)),
    count: Math.min(1, ports.length),
    circleM,
  };
  if (ports.length < 2) return [largest];
  const byAngle = [...ports].sort((a, b) => a.angleDeg - b.angleDeg);
  const narrowest = Math.max(
    ...byAngle.flatMap((port, index) => {
      const next = byAngle[(index + 1) % byAngle.length];
      return next === undefined ? [] : [share(port, next)];
    }),
  );
  const apart = circleM * Math.sin(Math.PI / ports.length);
  return [largest, { diameterM: narrowest * apart, count: ports.length, circleM }];
};
