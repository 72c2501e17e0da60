import type { CoverPort, ItemOf } from '@flangewise/model';
import { z } from 'zod';
import data from '../designs/port-patterns.json' with { type: 'json' };
import type { CoverDesign } from '../cover-design.js';

const patternSchema = z.strictObject({
  bore: z.int().positive(),
  key: z.string(),
  label: z.string(),
  bushing: z.enum(['none', 'small', 'medium', 'large']),
  bushingBoreM: z.number().min(0),
  circleM: z.number().positive(),
  portsM: z.array(z.number().positive()).min(1).meta({ description: 'In turn around the circle' }),
  tiltsDeg: z.record(z.string(), z.number().min(0).max(45)).meta({ description: 'By port diameter in mm' }),
});

const patterns = z.array(patternSchema).parse(data.patterns);

/** What a pattern settles of a cover. */
export interface Pattern {
  readonly label: string;
  readonly bushing: ItemOf<'cover'>['bushing'];
  readonly bushingBoreM: number;
  readonly ports: readonly CoverPort[];
}

/** Angle that two ports of a circle take between their centres, with so much metal between them [rad]. */
const angleBetween = (
  a: number,
  b: number,
  at: { readonly circleM: number; readonly metalM: number },
): number => 2 * Math.asin(Math.min(1, ((a + b) / 2 + at.metalM) / at.circleM));

/** Metal between neighbours so that all ports just fill the circle [m], by halving. */
const evenMetalM = (portsM: readonly number[], circleM: number): number => {
  const turn = (metalM: number): number =>
    portsM.reduce(
      (sum, port, index) =>
        sum + angleBetween(port, portsM[(index + 1) % portsM.length] ?? port, { circleM, metalM }),
      0,
    );
  let [low, high] = [0, circleM];
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (turn(middle) > 2 * Math.PI) high = middle;
    else low = middle;
  }
  return low;
};

/** Ports in turn around one circle with equal metal between neighbours, the first at the front. */
export const portsAround = (
  portsM: readonly number[],
  circleM: number,
  tiltOf: (portM: number) => number,
): readonly CoverPort[] => {
  const metalM = evenMetalM(portsM, circleM);
  let angle = 0;
  return portsM.map((diameterM, index) => {
    const before = portsM[index - 1];
    if (before !== undefined) angle += angleBetween(before, diameterM, { circleM, metalM });
    return {
      name: `N${String(index + 1)}`,
      diameterM,
      boltCircleM: circleM,
      angleDeg: Number(((angle * 180) / Math.PI).toFixed(1)),
      tiltDeg: tiltOf(diameterM),
    };
  });
};

/** A pattern of a bore: `A` is that of the covers that are designed one by one. */
export const patternOf = (bore: number, key: string, designed: readonly CoverDesign[]): Pattern => {
  if (key === 'A') {
    const cover = designed.find((design) => design.bore === bore && design.label === '');
    if (cover === undefined) throw new Error(`no cover of bore ${String(bore)} is designed for pattern A`);
    const { bushing, bushingBoreM, ports } = cover;
    return { label: '', bushing, bushingBoreM, ports };
  }
  const found = patterns.find((pattern) => pattern.bore === bore && pattern.key === key);
  if (found === undefined)
    throw new Error(`port-patterns.json has no pattern ${key} of bore ${String(bore)}`);
  const tiltOf = (portM: number): number => found.tiltsDeg[String(Math.round(portM * 1000))] ?? 0;
  return {
    label: `, ${found.label}`,
    bushing: found.bushing,
    bushingBoreM: found.bushingBoreM,
    ports: portsAround(found.portsM, found.circleM, tiltOf),
  };
};
