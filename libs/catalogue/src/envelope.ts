import type { Item } from '@flangewise/model';

export type Envelope = NonNullable<Item['envelope']>;

const round = (diameterM: number, heightM: number): Envelope => ({
  lengthM: diameterM,
  widthM: diameterM,
  heightM,
});

/** What the dimensions of a part say of the room that it takes. */
const fromDimensions = (item: Item): Envelope | undefined => {
  switch (item.slot) {
    case 'vessel': {
      const { geometry, jacket, liningThicknessM = 0, depthM } = item;
      const wallM = geometry.wallThicknessM + liningThicknessM + (jacket?.gapM ?? 0);
      return round(
        Math.max(geometry.flangeOuterDiameterM, geometry.innerDiameterM + 2 * wallM),
        depthM + geometry.endThicknessM + (jacket?.gapM ?? 0),
      );
    }
    case 'stirrer':
      return round(item.diameterM, item.bladeWidthM);
    case 'shaft':
      return round(item.diameterM, item.lengthM + item.bearingSpanM);
    case 'coil':
      return item.reachM === undefined
        ? undefined
        : round(item.coilDiameterM + item.tubeDiameterM, item.reachM);
    case 'shield':
      return round(item.maxDiameterM, item.maxHeightM);
    default:
      return undefined;
  }
};

/** Room that a part takes: what it says itself, else what follows from its dimensions; undefined where neither does. */
export const envelopeOf = (item: Item): Envelope | undefined => item.envelope ?? fromDimensions(item);
