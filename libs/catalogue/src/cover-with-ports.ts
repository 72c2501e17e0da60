import { type CalculationError, fail, type ItemOf, type Outcome, succeed } from '@flangewise/model';
import { completeCover, permissibleCoverPressurePa } from './complete-cover.js';
import type { CoverDesign } from './cover-design.js';
import { jointOf } from './joint.js';
import { leastOf } from './least-step.js';
import { portDistanceM } from './port-pattern.js';

type Cover = ItemOf<'cover'>;

/** Opening for the shaft by the size of its bushing [m]. */
const bushingBoreM: Readonly<Record<Cover['bushing'], number>> = {
  none: 0,
  small: 0.016,
  medium: 0.03,
  large: 0.06,
};

/** Rims are heavy above this pressure. */
const heavyAbovePa = 2e7;
const thickness = { step: 0.001, most: 0.4 };
/** Metal that stays between ports, to the shaft and to the seal [m]. */
const leastMetalM = 0.002;

const portTrouble = (ports: Cover['ports'], bore: number, shaftM: number): string | undefined => {
  for (const [index, port] of ports.entries()) {
    const reach = port.boltCircleM / 2;
    if (reach + port.diameterM / 2 + leastMetalM / 2 > bore / 2000)
      return `${port.name} leaves the bore of ${String(bore)} mm`;
    if (reach - port.diameterM / 2 - leastMetalM / 2 < shaftM / 2)
      return `${port.name} meets the bushing of the shaft`;
    const met = ports
      .slice(index + 1)
      .find((other) => portDistanceM(port, other) < (port.diameterM + other.diameterM) / 2 + leastMetalM);
    if (met !== undefined)
      return `${port.name} and ${met.name} leave less than 2 mm of metal between each other`;
  }
  return undefined;
};

export interface CoverWithPorts {
  readonly cover: Cover;
  /** Mass of the plain plate that it is cut from [kg]. */
  readonly plateMassKg: number;
}

/**
 * A cover like one of the range with other ports: its thickness is the least whole millimetre that carries PS of the
 * one that it is made like.
 *
 * @error CALC_OUT_OF_RANGE for ports that do not fit, or weaken every plate too much
 */
export const coverWithPorts = (
  like: Cover,
  ports: Cover['ports'],
): Outcome<CoverWithPorts, CalculationError> => {
  const pressurePaGauge = like.rating?.maxPressurePaGauge ?? 0;
  const shaftM = bushingBoreM[like.bushing];
  const trouble = portTrouble(ports, like.bore, shaftM);
  if (trouble !== undefined)
    return fail({
      code: 'CALC_OUT_OF_RANGE',
      message: `ports: ${trouble}; move it or make it smaller`,
      field: 'ports',
    });
  const design: Omit<CoverDesign, 'thicknessM'> = {
    id: like.id,
    families: like.families,
    bore: like.bore,
    material: like.material,
    construction: like.construction,
    carrier: like.carrier ?? null,
    ports,
    bushing: like.bushing,
    bushingBoreM: shaftM,
    ...jointOf(like.bore, pressurePaGauge > heavyAbovePa),
    minTemperatureK: like.rating?.minTemperatureK ?? 0,
    maxTemperatureK: like.rating?.maxTemperatureK ?? 0,
    label: '',
    leadTimeDays: like.leadTimeDays,
  };
  const thicknessM = leastOf(0.01, thickness, (thicknessM) => {
    const carried = permissibleCoverPressurePa({ ...design, thicknessM });
    return carried.ok && carried.value >= pressurePaGauge;
  });
  if (thicknessM === undefined)
    return fail({
      code: 'CALC_OUT_OF_RANGE',
      message: `ports: no plate up to 400 mm carries ${String(pressurePaGauge / 1e5)} bar with them; take fewer or smaller ones`,
      field: 'ports',
    });
  const cover = completeCover({ ...design, thicknessM });
  const plain = completeCover({ ...design, thicknessM, ports: [], bushingBoreM: 0 });
  if (!cover.ok) return cover;
  return plain.ok ? succeed({ cover: cover.value, plateMassKg: plain.value.massKg }) : plain;
};
