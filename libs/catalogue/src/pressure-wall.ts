import type { VesselDesign } from './vessel-design.js';

/** The wall that carries the pressure [m]: a lining adds to its inner diameter and takes no load. */
export interface PressureWall {
  readonly material: string;
  readonly innerDiameterM: number;
  readonly cylinderLengthM: number;
  readonly wallThicknessM: number;
  readonly endThicknessM: number;
  readonly form: VesselDesign['geometry']['endForm'];
  readonly corrosionAllowanceM: number;
  readonly temperatureK: number;
}

/** What of a vessel decides on the wall that carries. */
export type WalledVessel = Pick<
  VesselDesign,
  'geometry' | 'material' | 'carrier' | 'corrosionAllowanceM' | 'liningThicknessM' | 'maxTemperatureK'
>;

export const pressureWallOf = (design: WalledVessel): PressureWall => {
  const { geometry, carrier, liningThicknessM = 0 } = design;
  return {
    material: carrier ?? design.material,
    innerDiameterM: geometry.innerDiameterM + 2 * liningThicknessM,
    cylinderLengthM: geometry.cylinderLengthM,
    wallThicknessM: geometry.wallThicknessM,
    endThicknessM: geometry.endThicknessM,
    form: geometry.endForm,
    corrosionAllowanceM: design.corrosionAllowanceM,
    temperatureK: design.maxTemperatureK,
  };
};
