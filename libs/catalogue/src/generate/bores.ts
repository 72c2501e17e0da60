import { z } from 'zod';
import data from '../designs/bores.json' with { type: 'json' };

const boreSchema = z.strictObject({
  bore: z.int().positive().meta({ unit: 'mm' }),
  sealDiameterM: z.number().positive(),
  loadCircleM: z.number().positive(),
  heavyLoadCircleM: z.number().positive(),
  outerDiameterM: z.number().positive(),
  heavyOuterDiameterM: z.number().positive(),
});

const bores = new Map(
  z
    .array(boreSchema)
    .parse(data.bores)
    .map((row) => [row.bore, row]),
);

/** The joint of a bore: where it seals, where its bolts sit, how wide its rim is [m]. */
export interface Joint {
  readonly sealDiameterM: number;
  readonly loadCircleM: number;
  readonly outerDiameterM: number;
}

export const jointOf = (bore: number, heavy: boolean): Joint => {
  const found = bores.get(bore);
  if (found === undefined)
    throw new Error(`no bore ${String(bore)}; bores.json has ${[...bores.keys()].join(', ')}`);
  return {
    sealDiameterM: found.sealDiameterM,
    loadCircleM: heavy ? found.heavyLoadCircleM : found.loadCircleM,
    outerDiameterM: heavy ? found.heavyOuterDiameterM : found.outerDiameterM,
  };
};
