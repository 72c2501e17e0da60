import { z } from 'zod';

const metre = (description: string) => z.number().min(0).meta({ unit: 'm', description });
const degrees = (description: string, most: number) =>
  z.number().min(0).max(most).meta({ unit: 'deg', description });

/** A port of a cover: how wide, on which circle, at which angle, how tilted. */
export const coverPort = z.strictObject({
  name: z.string().regex(/^N\d+$/),
  diameterM: metre('Free diameter'),
  boltCircleM: metre('Diameter of the circle on which it sits'),
  angleDeg: degrees('Position, clockwise from front', 360),
  tiltDeg: degrees('Tilt outwards', 45).default(0),
});

export type CoverPort = z.output<typeof coverPort>;
