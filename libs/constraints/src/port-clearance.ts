import { baffleAnglesDeg, type CoverPort, type ItemOf } from '@flangewise/model';

/** What stands below the cover and is in the way of what reaches down from its ports. */
export interface BelowCover {
  readonly stirrer: Pick<ItemOf<'stirrer'>, 'impeller' | 'diameterM' | 'bladeWidthM' | 'shaftDiameterM'>;
  readonly coil: Pick<ItemOf<'coil'>, 'bore' | 'coilDiameterM' | 'tubeDiameterM' | 'innerClearanceM'>;
  readonly baffles: Pick<ItemOf<'baffles'>, 'bore' | 'count' | 'widthM'>;
}

type Port = Pick<CoverPort, 'boltCircleM' | 'angleDeg' | 'tiltDeg'>;

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** Room that stays free around what reaches down: 1 % of the bore, at least 1 mm [m]. */
export const clearGapM = (bore: number): number => Math.max(0.001, bore / 1e5);

/**
 * The largest diameter of a straight part that reaches down at a port and stands clear of the stirrer, at whatever height
 * the stirrer is fixed on its shaft: outside its circle, or between the shaft and the arms of an anchor or a ribbon.
 */
export const besideStirrerM = (port: Port, stirrer: BelowCover['stirrer'], bore: number): number => {
  const gapM = clearGapM(bore);
  const radiusM = port.boltCircleM / 2;
  const sweptM = stirrer.diameterM / 2;
  // A bar turns on the bottom, below everything that reaches down; a stirrer as wide as the bore fits no vessel of it.
  if (stirrer.impeller === 'magnetic bar' || stirrer.diameterM * 1000 >= bore) return Infinity;
  const outside = 2 * (radiusM - sweptM - gapM);
  const hasArms = stirrer.impeller === 'anchor' || stirrer.impeller === 'double helical ribbon';
  if (!hasArms) return outside;
  const inside = Math.min(
    radiusM - stirrer.shaftDiameterM / 2 - gapM,
    sweptM - stirrer.bladeWidthM - gapM - radiusM,
  );
  return Math.max(outside, 2 * inside);
};

/** The same for a coil: inside its turns or outside them. */
export const besideCoilM = (port: Port, coil: BelowCover['coil'], bore: number): number => {
  if (coil.bore !== bore) return Infinity;
  const gapM = clearGapM(bore);
  const radiusM = port.boltCircleM / 2;
  const outerM = (coil.coilDiameterM + coil.tubeDiameterM) / 2;
  return 2 * Math.max(coil.innerClearanceM / 2 - gapM - radiusM, radiusM - outerM - gapM);
};

/** The same for baffles: inside their edge, or between two of them. */
export const besideBafflesM = (port: Port, baffles: BelowCover['baffles'], bore: number): number => {
  if (baffles.bore !== bore) return Infinity;
  const gapM = clearGapM(bore);
  const radiusM = port.boltCircleM / 2;
  const inside = bore / 2000 - baffles.widthM - gapM - radiusM;
  const sideways = baffleAnglesDeg(baffles.count).map((angle) => {
    const apart = radians(port.angleDeg - angle);
    return Math.cos(apart) > 0 ? radiusM * Math.abs(Math.sin(apart)) : radiusM;
  });
  return 2 * Math.max(inside, Math.min(...sideways) - gapM);
};

/** A straight part reaches down through an upright port alone: through a tilted one it would lean to the shaft. */
export const throughPortM = (port: Pick<CoverPort, 'diameterM' | 'tiltDeg'>): number =>
  port.tiltDeg === 0 ? port.diameterM : 0;
