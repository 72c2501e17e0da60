import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity, type StepLog } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { shown } from '../shown.js';
import { published } from '../source-reference.js';
import { contentsMoment, wallCentroid } from './end-centroid.js';
import { distance, mass } from './geometry-fields.js';
import { meridianOf } from './meridian.js';
import { endSizeOf, fillOf, type VesselGeometry, type VesselSize } from './vessel-geometry.js';
import { vesselFields, vesselOf } from './vessel-inputs.js';

/** A part of the whole: its mass, and the height of its centre above the lowest inner point. */
interface Lump {
  readonly massKg: number;
  readonly heightM: number;
}

const centreOf = (lumps: readonly Lump[]): number =>
  lumps.reduce((sum, { massKg, heightM }) => sum + massKg * heightM, 0) /
  lumps.reduce((sum, { massKg }) => sum + massKg, 0);

const contentsHeight = (size: VesselSize, geometry: VesselGeometry, volume: number): number => {
  const { end } = geometry;
  const { depth } = fillOf(size, geometry, volume);
  const level = Math.min(depth, end.height);
  const inEnd = end.volumeTo(level);
  const above = Math.max(0, volume - end.volume);
  if (inEnd + above === 0) return level;
  const moment = contentsMoment(end, meridianOf(endSizeOf(size)), level) + (above * (end.height + depth)) / 2;
  return moment / (inEnd + above);
};

const explain = (lumps: readonly (readonly [string, Lump | undefined])[], log: StepLog): void => {
  for (const [name, lump] of lumps) {
    if (lump === undefined) continue;
    log({
      symbol: `z_${name}`,
      formula: name === 's' || name === 'f' ? 'middle of the height' : '∫ z dV / ∫ dV',
      substituted: `m_${name} = ${shown(lump.massKg)} kg`,
      value: lump.heightM,
      unit: 'm',
    });
  }
};

/**
 * Centre of gravity of an upright vessel and of its parts on its axis, above the lowest point inside.
 *
 *   z = Σ m_i z_i / Σ m_i,  z_i = ∫ z dV / ∫ dV over each part
 *
 * @param as geometry.vessel; contentsDensityKgPerM3 of what fills it [kg/m³]
 * @returns masses [kg] and heights of the centres [m]: shell, end, flange, contents, vessel empty and with its contents
 * @range as geometry.vessel; nozzles, cover and internals are parts of their own (geometry.centreOfGravity)
 * @error as geometry.vessel
 * @source integrals over solids of revolution; radii din-28011:2012, din-28013:2012
 */
export const vesselCentreOfGravity = calculation({
  id: 'geometry.vesselCentreOfGravity',
  title: 'Centre of gravity of a vessel and of its parts',
  inputs: z.strictObject({
    ...vesselFields,
    contentsDensityKgPerM3: quantity(
      { unit: 'kg/m3', symbol: 'ρ_f', description: 'Density of the contents; water at 4 °C unless given' },
      z.number().positive(),
    ).default(1000),
  }),
  outputs: z.strictObject({
    emptyMassKg: mass('m', 'Mass of the empty vessel'),
    emptyCentreM: distance('z', 'Centre of the empty vessel above the lowest point inside'),
    shellCentreM: distance('z_s', 'Centre of the cylinder; the rim of the end where there is no cylinder'),
    endCentreM: distance('z_e', 'Centre of the wall of the end; negative below the lowest point inside'),
    flangeCentreM: distance('z_f', 'Centre of the rim flange').optional(),
    contentsMassKg: mass('m_c', 'Mass of the contents').optional(),
    contentsCentreM: distance('z_c', 'Centre of the contents').optional(),
    filledMassKg: mass('m_t', 'Mass of vessel and contents').optional(),
    filledCentreM: distance('z_t', 'Centre of vessel and contents').optional(),
  }),
  formula: String.raw`z = \frac{\sum m_i z_i}{\sum m_i},\quad z_i = \frac{\int z\,dV}{\int dV}`,
  range: 'as geometry.vessel; the vessel alone, on its axis',
  source: [published('din-28011:2012'), published('din-28013:2012')],
  compute: (given, log) => {
    const checked = vesselOf(given);
    if (!checked.ok) return checked;
    const { size, geometry, flangeVolume } = checked.value;
    const { densityKgPerM3, fillVolumeM3, contentsDensityKgPerM3, flangeHeightM } = given;
    const shell = {
      massKg: geometry.shellVolume * densityKgPerM3,
      heightM: geometry.end.height + size.cylinderLength / 2,
    };
    const end = {
      massKg: geometry.endWallVolume * densityKgPerM3,
      heightM:
        size.form === 'flat'
          ? -size.endThickness / 2
          : wallCentroid(meridianOf(endSizeOf(size)), size.endThickness).height,
    };
    const flange =
      flangeHeightM === undefined
        ? undefined
        : { massKg: flangeVolume * densityKgPerM3, heightM: geometry.depth - flangeHeightM / 2 };
    const contents =
      fillVolumeM3 === undefined
        ? undefined
        : {
            massKg: fillVolumeM3 * contentsDensityKgPerM3,
            heightM: contentsHeight(size, geometry, fillVolumeM3),
          };
    const metal = [shell, end, ...(flange === undefined ? [] : [flange])];
    const emptyMassKg = metal.reduce((sum, { massKg }) => sum + massKg, 0);
    const emptyCentreM = centreOf(metal);
    if (log !== undefined) {
      explain(
        [
          ['s', shell],
          ['e', end],
          ['f', flange],
          ['c', contents],
        ],
        log,
      );
      log(
        formulaStep({
          symbol: 'z',
          formula:
            flange === undefined ? '(m_s · z_s + m_e · z_e) / m' : '(m_s · z_s + m_e · z_e + m_f · z_f) / m',
          where: {
            m_s: shell.massKg,
            z_s: shell.heightM,
            m_e: end.massKg,
            z_e: end.heightM,
            ...(flange === undefined ? {} : { m_f: flange.massKg, z_f: flange.heightM }),
            m: emptyMassKg,
          },
          value: emptyCentreM,
          unit: 'm',
        }),
      );
    }
    return succeed({
      emptyMassKg,
      emptyCentreM,
      shellCentreM: shell.heightM,
      endCentreM: end.heightM,
      ...(flange === undefined ? {} : { flangeCentreM: flange.heightM }),
      ...(contents === undefined
        ? {}
        : {
            contentsMassKg: contents.massKg,
            contentsCentreM: contents.heightM,
            filledMassKg: emptyMassKg + contents.massKg,
            filledCentreM: centreOf([...metal, contents]),
          }),
    });
  },
});
