import data from './designs/bores.json' with { type: 'json' };

/** The joint of a bore: where it seals, where its bolts sit, how wide its rim is [m]. */
export interface Joint {
  readonly sealDiameterM: number;
  readonly loadCircleM: number;
  readonly outerDiameterM: number;
}

/** @param heavy whether the rim is that for high pressure */
export const jointOf = (bore: number, heavy: boolean): Joint => {
  const found = data.bores.find((row) => row.bore === bore);
  if (found === undefined)
    throw new Error(`no bore ${String(bore)}; there are ${data.bores.map((row) => row.bore).join(', ')}`);
  return {
    sealDiameterM: found.sealDiameterM,
    loadCircleM: heavy ? found.heavyLoadCircleM : found.loadCircleM,
    outerDiameterM: heavy ? found.heavyOuterDiameterM : found.outerDiameterM,
  };
};
