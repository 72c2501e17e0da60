import type { ItemOf } from '@flangewise/model';

type Cover = ItemOf<'cover'>;

/** What a cover is made like. Its mass and its PS are computed from it. */
export interface CoverDesign extends Pick<
  Cover,
  | 'id'
  | 'families'
  | 'bore'
  | 'material'
  | 'construction'
  | 'thicknessM'
  | 'ports'
  | 'bushing'
  | 'leadTimeDays'
> {
  /** What carries the pressure under a lining; null where the wetted material carries. */
  readonly carrier: string | null;
  /** Opening in the centre for the shaft; 0 without one [m]. */
  readonly bushingBoreM: number;
  /** Circle on which the seal lies [m]. */
  readonly sealDiameterM: number;
  /** Circle of the bolts; clamps and segments hold further in [m]. */
  readonly loadCircleM: number;
  readonly outerDiameterM: number;
  readonly minTemperatureK: number;
  readonly maxTemperatureK: number;
  /** Words after the pressure in the name, with their comma. */
  readonly label: string;
}
