import { fail, type ItemOf, type Outcome, succeed } from '@flangewise/model';
import { permissibleExternalPressurePa } from './external-pressure.js';
import { ratedPressureBar } from './internal-pressure.js';
import { rounded } from './rounded.js';
import type { VesselDesign } from './vessel-design.js';
import { vesselFigures } from './vessel-figures.js';

const atmospherePa = 101_325;

const materialWord = ({ construction, material }: VesselDesign): string =>
  construction === 'glass' ? 'glass' : construction === 'lined' ? `${material}-lined` : material;

/** `12 mL`, `2.5 L`. */
const volumeWord = (litres: number): string =>
  litres < 0.1 ? `${String(rounded(litres * 1000))} mL` : `${String(litres)} L`;

/**
 * The item of a vessel from its design: every figure and rating computed, none given.
 *
 * Full vacuum is granted where the wall stands one atmosphere and the jacket pressure together from outside, and
 * never over a loose lining.
 *
 * @error CALC_OUT_OF_RANGE for a jacket whose pressure the wall does not stand; otherwise as the parts
 */
export const completeVessel = (design: VesselDesign): Outcome<ItemOf<'vessel'>> => {
  const figures = vesselFigures(design);
  if (!figures.ok) return figures;
  const pressure = ratedPressureBar(design);
  if (!pressure.ok) return pressure;
  const outside = permissibleExternalPressurePa(design);
  if (!outside.ok) return outside;
  const jacketPa = design.jacket?.maxPressurePaGauge ?? 0;
  if (outside.value < jacketPa) {
    return fail({
      code: 'CALC_OUT_OF_RANGE',
      message: `${design.id}: the wall stands ${(outside.value / 1e5).toFixed(2)} bar from outside, the jacket has ${(jacketPa / 1e5).toFixed(2)} bar`,
      field: 'jacket.maxPressurePaGauge',
      given: jacketPa,
      allowed: `at most ${(outside.value / 1e5).toFixed(2)} bar`,
    });
  }
  const { jacket, liningThicknessM } = design;
  const { innerVolumeL, depthM, smallestFillL, massKg, jacketAreaM2 } = figures.value;
  return succeed({
    slot: 'vessel',
    id: design.id,
    name: `Vessel ${volumeWord(design.nominalVolumeL)}, ${materialWord(design)}, PS ${String(pressure.value)}${jacket === null ? '' : ', jacketed'}`,
    families: [design.family],
    massKg: rounded(massKg),
    leadTimeDays: design.leadTimeDays,
    wetted: [design.material],
    rating: {
      maxPressurePaGauge: pressure.value * 1e5,
      minTemperatureK: design.minTemperatureK,
      maxTemperatureK: design.maxTemperatureK,
      vacuum: design.construction !== 'lined' && outside.value >= atmospherePa + jacketPa,
    },
    portsM: [],
    life: 'current',
    family: design.family,
    construction: design.construction,
    material: design.material,
    carrier: design.carrier,
    ...(liningThicknessM === undefined ? {} : { liningThicknessM }),
    geometry: design.geometry,
    bore: design.bore,
    nominalVolumeL: design.nominalVolumeL,
    innerVolumeL: rounded(innerVolumeL),
    depthM: rounded(depthM),
    smallestFillL: rounded(smallestFillL),
    corrosionAllowanceM: design.corrosionAllowanceM,
    jacket: jacket === null ? null : { ...jacket, areaM2: rounded(jacketAreaM2) },
    bottomPortM: design.bottomPortM,
    thermalShockK: design.thermalShockK,
  });
};
