import { evaluate, vessel } from '@flangewise/engineering';
import { z } from 'zod';
import data from '../designs/vessel-series.json' with { type: 'json' };
import type { VesselDesign } from '../vessel-design.js';
import { jointOf } from '../joint.js';
import { leastWalls } from './least-walls.js';
import { listPrice } from './list-price.js';
import { partMaterial } from './part-materials.js';
import { numberAfter } from './series.js';
import type { PricedDesign } from './priced-design.js';
import { kelvin } from './words.js';

const seriesSchema = z.strictObject({
  firstNumber: z.string(),
  family: z.string(),
  construction: z.enum(['metal', 'glass', 'lined']),
  bore: z.int().positive(),
  innerDiameterM: z.number().positive(),
  volumesL: z.array(z.number().positive()).min(1),
  endForm: z.enum([
    'flat',
    'torispherical DIN 28011',
    'torispherical DIN 28013',
    '2:1 ellipsoidal',
    'hemispherical',
  ]),
  pressuresBar: z.array(z.number().positive()).min(1),
  maxC: z.number(),
  materials: z.array(z.string()).min(1),
  carrier: z.string().optional(),
  liningThicknessM: z.number().positive().optional(),
  corrosionAllowanceM: z.number().min(0).default(0),
  leastWallM: z.number().positive().meta({ description: 'Thinnest wall that is made; that of glass' }),
  jacket: z
    .strictObject({ maxPressurePaGauge: z.number().positive(), gapM: z.number().positive() })
    .optional(),
  bottomPortM: z.number().positive().optional(),
  thermalShockK: z.number().positive().optional(),
  heavyRim: z.boolean().default(false),
  leadTimeDays: z.int().positive(),
  priceEur: z.number().positive().meta({ description: 'In 1.4404 at the middle of the volumes' }),
});

type Series = z.output<typeof seriesSchema>;

/** Rims are forged in whole millimetres: a share of the bore, more under high pressure. */
const rimHeightM = ({ innerDiameterM, heavyRim }: Series): number =>
  Math.ceil((0.014 + innerDiameterM * (innerDiameterM > 0.25 ? 0.085 : 0.13) * (heavyRim ? 1.4 : 1)) * 1000) /
  1000;

/** Length of the cylinder that gives the volume with the end, in whole millimetres [m]. */
const cylinderLengthM = (series: Series, volumeL: number): number => {
  const { innerDiameterM, endForm, leastWallM } = series;
  const end = evaluate(vessel, {
    innerDiameterM,
    cylinderLengthM: innerDiameterM,
    wallThicknessM: leastWallM,
    endThicknessM: leastWallM,
    form: endForm,
    densityKgPerM3: 1,
  });
  if (!end.ok) throw new Error(end.error.message);
  const area = (Math.PI / 4) * innerDiameterM ** 2;
  return Math.ceil(((volumeL / 1000 - end.value.endVolumeM3) / area) * 1000 - 1e-6) / 1000;
};

/** The usual price grows with the volume to this power. */
const volumeExponent = 0.45;

const vesselOf = (
  series: Series,
  place: { readonly id: string; readonly volumeL: number; readonly bar: number; readonly material: string },
): PricedDesign<VesselDesign> => {
  const material = partMaterial(place.material);
  const { construction, bore, endForm, leastWallM, liningThicknessM, carrier } = series;
  const lowestC = construction === 'metal' ? material.minC : -30;
  const start: VesselDesign = {
    id: place.id,
    family: series.family,
    construction,
    material: place.material,
    carrier: carrier ?? null,
    ...(liningThicknessM === undefined ? {} : { liningThicknessM }),
    nominalVolumeL: place.volumeL,
    bore,
    geometry: {
      innerDiameterM: series.innerDiameterM,
      cylinderLengthM: cylinderLengthM(series, place.volumeL),
      wallThicknessM: leastWallM,
      endForm,
      endThicknessM: leastWallM,
      flangeOuterDiameterM: jointOf(bore, series.heavyRim).outerDiameterM,
      flangeHeightM: rimHeightM(series),
    },
    minTemperatureK: kelvin(lowestC),
    maxTemperatureK: kelvin(Math.min(series.maxC, material.maxC)),
    corrosionAllowanceM: series.corrosionAllowanceM,
    jacket: series.jacket ?? null,
    bottomPortM: series.bottomPortM ?? null,
    thermalShockK: series.thermalShockK ?? null,
    leadTimeDays: series.leadTimeDays + material.furtherDays,
  };
  const design = construction === 'glass' ? start : leastWalls(start, place.bar);
  const middle = series.volumesL[Math.floor(series.volumesL.length / 2)] ?? place.volumeL;
  const grown = (place.volumeL / middle) ** volumeExponent;
  return { design, priceEur: listPrice(series.priceEur * grown * material.priceFactor) };
};

/** Vessels of every series: each volume, pressure and material one, with the least walls that carry. */
export const vesselsOfSeries = (): readonly PricedDesign<VesselDesign>[] =>
  z
    .array(seriesSchema)
    .parse(data.series)
    .flatMap((series) =>
      series.volumesL
        .flatMap((volumeL) => series.pressuresBar.map((bar) => ({ volumeL, bar })))
        .flatMap((one) => series.materials.map((material) => ({ ...one, material })))
        .map((one, place) => vesselOf(series, { ...one, id: numberAfter(series.firstNumber, place) })),
    );
