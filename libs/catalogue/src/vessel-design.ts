import type { ItemOf } from '@flangewise/model';

type Vessel = ItemOf<'vessel'>;

/** What a vessel is made like. Volume, depth, mass, areas and every rating are computed from it. */
export interface VesselDesign
  extends
    Pick<
      Vessel,
      | 'id'
      | 'family'
      | 'construction'
      | 'material'
      | 'carrier'
      | 'geometry'
      | 'bore'
      | 'nominalVolumeL'
      | 'corrosionAllowanceM'
      | 'bottomPortM'
      | 'thermalShockK'
      | 'leadTimeDays'
    >,
    Partial<Pick<Vessel, 'liningThicknessM'>> {
  readonly minTemperatureK: number;
  readonly maxTemperatureK: number;
  /** Wall of the branch of the bottom port [m]; metal and lined vessels with a port have one. */
  readonly bottomBranchThicknessM?: number;
  readonly jacket: { readonly maxPressurePaGauge: number; readonly gapM: number } | null;
}
