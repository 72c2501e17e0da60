import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, type StepLog } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';
import { area, distance, extentField, mass, volume } from './geometry-fields.js';
import { areaUpTo, type Fill, fillOf, type VesselGeometry } from './vessel-geometry.js';
import { vesselFields, vesselOf } from './vessel-inputs.js';

const inputs = z.strictObject({
  ...vesselFields,
  jacketTopM: extentField(
    'h_j',
    'Height to which the jacket reaches above the lowest point; the rim unless given',
  ).optional(),
});

type Inputs = z.output<typeof inputs>;

const explain = (given: Inputs, geometry: VesselGeometry, log: StepLog): void => {
  const {
    innerDiameterM: D_i,
    cylinderLengthM: L,
    wallThicknessM: e,
    endThicknessM: t,
    densityKgPerM3: ρ,
  } = given;
  const { end, outerDiameter: D_e } = geometry;
  log({
    symbol: 'V_e',
    formula: '∫ π x(z)² dz over the end',
    substituted: `${given.form}, D_i = ${shown(D_i)} m, depth ${shown(end.height)} m`,
    value: end.volume,
    unit: 'm3',
  });
  log(
    formulaStep({
      symbol: 'V',
      formula: 'V_e + π / 4 · D_i² · L',
      where: { V_e: end.volume, D_i, L },
      value: geometry.volume,
      unit: 'm3',
    }),
  );
  log(
    formulaStep({
      symbol: 'm_s',
      formula: 'π / 4 · (D_e² − D_i²) · L · ρ',
      where: { D_e, D_i, L, ρ },
      value: geometry.shellVolume * ρ,
      unit: 'kg',
      note: `shell, wall ${shown(e)} m`,
    }),
  );
  log(
    given.form === 'flat'
      ? formulaStep({
          symbol: 'm_e',
          formula: 'π / 4 · D_e² · t · ρ',
          where: { D_e, t, ρ },
          value: geometry.endWallVolume * ρ,
          unit: 'kg',
          note: 'end',
        })
      : formulaStep({
          symbol: 'm_e',
          formula: '(A · t + M · t² + 2 · π / 3 · t³) · ρ',
          where: { A: end.area, t, M: end.meanCurvature, ρ },
          value: geometry.endWallVolume * ρ,
          unit: 'kg',
          note: 'end: inner surface A and integral of its mean curvature M',
        }),
  );
};

const explainFill = (fillVolume: number, fill: Fill, log: StepLog): void => {
  log({
    symbol: 'h_f',
    formula: 'height at which the contents reach V_f',
    substituted: `V_f = ${shown(fillVolume)} m³`,
    value: fill.depth,
    unit: 'm',
  });
  log({
    symbol: 'A_f',
    formula: 'inner surface below that height',
    substituted: `h = ${shown(fill.depth)} m`,
    value: fill.wettedArea,
    unit: 'm2',
  });
};

/**
 * Volume, depth, wetted surface and mass of an upright vessel: cylinder, end below, rim flange above.
 *
 * @param form          end; torispherical radii on the outer diameter of the end, D_i + 2 e_e
 * @param flangeOuterDiameterM, flangeHeightM a ring round the shell; both or neither [m]
 * @param fillVolumeM3  contents at rest [m³]
 * @param jacketTopM    end of the jacket above the lowest point, the rim unless given [m]
 * @returns volumes [m³], depths [m], surfaces [m²], masses [kg]; fill results where a fill is given
 * @range lengths above zero, fill at most the inner volume, torispherical end at most D_i / 2 thick
 * @error CALC_OUT_OF_RANGE for a fill above the volume or a flange inside the shell; CALC_INVALID_INPUT for a
 *   cone without angle or half a flange
 * @source din-28011:2012, din-28013:2012 (radii); geometry of solids of revolution, Steiner's formula
 */
export const vessel = calculation({
  id: 'geometry.vessel',
  title: 'Volume, surface and mass of a vessel',
  inputs,
  outputs: z.strictObject({
    innerVolumeM3: volume('V', 'Inner volume to the rim'),
    endVolumeM3: volume('V_e', 'Inner volume of the end'),
    totalDepthM: distance('H', 'Depth from the rim'),
    endDepthM: distance('h_e', 'Depth of the end'),
    outerDiameterM: distance('D_e', 'Outer diameter of the shell'),
    innerAreaM2: area('A', 'Inner surface, end and cylinder'),
    shellMassKg: mass('m_s', 'Mass of the cylinder'),
    endMassKg: mass('m_e', 'Mass of the end'),
    flangeMassKg: mass('m_f', 'Mass of the rim flange'),
    massKg: mass('m', 'Mass of the vessel'),
    fillDepthM: distance('h_f', 'Depth of the contents').optional(),
    wettedAreaM2: area('A_f', 'Wetted surface').optional(),
    wettedCylinderAreaM2: area('A_c', 'Wetted surface of the cylinder alone').optional(),
    jacketAreaM2: area('A_j', 'Wetted surface that the jacket covers at this fill').optional(),
  }),
  formula: String.raw`V = V_e + \tfrac{\pi}{4} D_i^2 L,\quad m = \rho\left(\tfrac{\pi}{4}(D_e^2 - D_i^2)L + A t + M t^2 + \tfrac{2\pi}{3}t^3\right)`,
  range: 'lengths above zero; fill at most the inner volume; nozzles and internals not counted',
  source: [published('din-28011:2012'), published('din-28013:2012')],
  compute: (given, log) => {
    const { fillVolumeM3, densityKgPerM3 } = given;
    const checked = vesselOf(given);
    if (!checked.ok) return checked;
    const { size, geometry, flangeVolume } = checked.value;
    const fill = fillVolumeM3 === undefined ? undefined : fillOf(size, geometry, fillVolumeM3);
    if (log !== undefined) {
      explain(given, geometry, log);
      if (fill !== undefined && fillVolumeM3 !== undefined) explainFill(fillVolumeM3, fill, log);
    }
    return succeed({
      innerVolumeM3: geometry.volume,
      endVolumeM3: geometry.end.volume,
      totalDepthM: geometry.depth,
      endDepthM: geometry.end.height,
      outerDiameterM: geometry.outerDiameter,
      innerAreaM2: geometry.end.area + Math.PI * given.innerDiameterM * given.cylinderLengthM,
      shellMassKg: geometry.shellVolume * densityKgPerM3,
      endMassKg: geometry.endWallVolume * densityKgPerM3,
      flangeMassKg: flangeVolume * densityKgPerM3,
      massKg: (geometry.shellVolume + geometry.endWallVolume + flangeVolume) * densityKgPerM3,
      ...(fill === undefined
        ? {}
        : {
            fillDepthM: fill.depth,
            wettedAreaM2: fill.wettedArea,
            wettedCylinderAreaM2: fill.wettedCylinderArea,
            jacketAreaM2: areaUpTo(size, geometry, Math.min(fill.depth, given.jacketTopM ?? Infinity)),
          }),
    });
  },
});
