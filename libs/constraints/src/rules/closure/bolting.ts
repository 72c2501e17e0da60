import { range } from '@flangewise/catalogue';
import type { ItemOf } from '@flangewise/model';

/** Stress at which the maker rates bolts up to the highest temperature [Pa]. */
export const boltStressPa = range.bolting.stressMPa * 1e6;

/** Contact width of the flat gaskets of the range, which stands on no data sheet [m]; rings touch in a line. */
const flatWidthM = 0.005;
const ringWidthM = 0.001;

export const gasketReads = ['kind', 'diameterM', 'gasketFactor', 'seatingStressPa'] as const;

/** Contact face of a seal round the diameter at which it seals, as the bolt calculations take it. */
export const gasketFace = (seal: Pick<ItemOf<'seal'>, (typeof gasketReads)[number]>) => {
  const width = seal.kind === 'flat gasket' ? flatWidthM : ringWidthM;
  return {
    gasketOuterDiameterM: seal.diameterM + width,
    gasketInnerDiameterM: seal.diameterM - width,
    gasketFactor: seal.gasketFactor,
    seatingStressPa: seal.seatingStressPa,
  };
};
