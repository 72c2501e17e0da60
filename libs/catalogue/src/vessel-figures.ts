import {
  cylinderThickness,
  designStressAt,
  evaluate,
  materialDensity,
  vessel,
} from '@flangewise/engineering';
import { type Outcome, succeed } from '@flangewise/model';
import { pressureWallOf } from './pressure-wall.js';
import type { VesselDesign } from './vessel-design.js';

/** What follows from the shape of a vessel and what it is made of. */
export interface VesselFigures {
  readonly innerVolumeL: number;
  readonly depthM: number;
  readonly smallestFillL: number;
  readonly massKg: number;
  /** Heated surface of the jacket; 0 without one [m²]. */
  readonly jacketAreaM2: number;
}

/** Height of the smallest batch over the inner diameter: it covers an impeller a third of the diameter off the bottom. */
const smallestFillOverDiameter = 0.35;
const thinnestJacketM = { metal: 0.003, glass: 0.004 } as const;
const jacketMetal = '1.4404';

const density = (material: string): Outcome<number> => {
  const figure = materialDensity(material);
  return figure.ok ? succeed(figure.value.value) : figure;
};

/** Wall of the jacket for its pressure at the temperature of the vessel, at least what can be made [m]. */
const jacketWallM = (design: VesselDesign, innerDiameterM: number): Outcome<number> => {
  if (design.construction === 'glass' || design.jacket === null) return succeed(thinnestJacketM.glass);
  const stress = designStressAt(jacketMetal, design.maxTemperatureK);
  if (!stress.ok) return stress;
  const wall = evaluate(cylinderThickness, {
    code: 'EN 13445-3',
    pressurePaGauge: design.jacket.maxPressurePaGauge,
    innerRadiusM: innerDiameterM / 2,
    allowableStressPa: stress.value.stressPa,
    jointEfficiency: 1,
  });
  return wall.ok
    ? succeed(Math.max(thinnestJacketM.metal, Math.ceil(wall.value.thicknessM * 2000) / 2000))
    : wall;
};

interface Jacket {
  readonly massKg: number;
  readonly areaM2: number;
}

/** The jacket surrounds end and cylinder up to the rim flange. */
const jacketOf = (design: VesselDesign): Outcome<Jacket> => {
  if (design.jacket === null) return succeed({ massKg: 0, areaM2: 0 });
  const { geometry } = design;
  const wall = pressureWallOf(design);
  const cylinderLengthM = Math.max(0, geometry.cylinderLengthM - geometry.flangeHeightM);
  const heated = evaluate(vessel, {
    innerDiameterM: geometry.innerDiameterM,
    cylinderLengthM,
    wallThicknessM: geometry.wallThicknessM,
    endThicknessM: geometry.endThicknessM,
    form: geometry.endForm,
    densityKgPerM3: 1,
  });
  if (!heated.ok) return heated;
  const innerDiameterM = wall.innerDiameterM + 2 * wall.wallThicknessM + 2 * design.jacket.gapM;
  const thickness = jacketWallM(design, innerDiameterM);
  if (!thickness.ok) return thickness;
  const rho = density(design.construction === 'glass' ? design.material : jacketMetal);
  if (!rho.ok) return rho;
  const shell = evaluate(vessel, {
    innerDiameterM,
    cylinderLengthM,
    wallThicknessM: thickness.value,
    endThicknessM: thickness.value,
    form: geometry.endForm,
    densityKgPerM3: rho.value,
  });
  return shell.ok ? succeed({ massKg: shell.value.massKg, areaM2: heated.value.innerAreaM2 }) : shell;
};

const liningMassKg = (design: VesselDesign): Outcome<number> => {
  const { liningThicknessM: thickness, geometry, material } = design;
  if (thickness === undefined || thickness === 0) return succeed(0);
  const rho = density(material);
  if (!rho.ok) return rho;
  const lining = evaluate(vessel, {
    innerDiameterM: geometry.innerDiameterM,
    cylinderLengthM: geometry.cylinderLengthM,
    wallThicknessM: thickness,
    endThicknessM: thickness,
    form: geometry.endForm,
    densityKgPerM3: rho.value,
  });
  return lining.ok ? succeed(lining.value.massKg) : lining;
};

/**
 * Volume, depth, smallest batch, mass and jacket area of a vessel, from its geometry and the densities of its
 * materials. The mass counts wall, end, rim flange, lining and jacket; ports and feet are not counted.
 *
 * @error as geometry.vessel, materialDensity and strength.cylinderThickness
 */
export const vesselFigures = (design: VesselDesign): Outcome<VesselFigures> => {
  const { geometry } = design;
  const wall = pressureWallOf(design);
  const rho = density(wall.material);
  if (!rho.ok) return rho;
  const body = { wallThicknessM: wall.wallThicknessM, endThicknessM: wall.endThicknessM, form: wall.form };
  const carrier = evaluate(vessel, {
    ...body,
    innerDiameterM: wall.innerDiameterM,
    cylinderLengthM: geometry.cylinderLengthM,
    densityKgPerM3: rho.value,
    flangeOuterDiameterM: geometry.flangeOuterDiameterM,
    flangeHeightM: geometry.flangeHeightM,
  });
  if (!carrier.ok) return carrier;
  const inside = evaluate(vessel, {
    ...body,
    innerDiameterM: geometry.innerDiameterM,
    cylinderLengthM: geometry.cylinderLengthM,
    densityKgPerM3: rho.value,
  });
  if (!inside.ok) return inside;
  const lining = liningMassKg(design);
  if (!lining.ok) return lining;
  const jacket = jacketOf(design);
  if (!jacket.ok) return jacket;
  const { endDepthM, endVolumeM3, innerVolumeM3, totalDepthM } = inside.value;
  const aboveEndM = Math.max(0, smallestFillOverDiameter * geometry.innerDiameterM - endDepthM);
  return succeed({
    innerVolumeL: innerVolumeM3 * 1000,
    depthM: totalDepthM,
    smallestFillL: (endVolumeM3 + (Math.PI / 4) * geometry.innerDiameterM ** 2 * aboveEndM) * 1000,
    massKg: carrier.value.massKg + lining.value + jacket.value.massKg,
    jacketAreaM2: jacket.value.areaM2,
  });
};
