import { preferredPressures, specialMaterials } from '@flangewise/catalogue';
import type { SpecialVessel, System, SystemInput } from '@flangewise/model';
import { conditionsOf } from './conditions-of.js';

/** What a disc takes between the process and PS: operating ratio 0.9, tolerance ±5 %. */
const processToPs = 1.05 / (0.9 * 0.95);
const temperatureStepK = 10;
const pressureStepPa = 2.5e6;

const psFor = (processPaGauge: number): number => {
  const needed = processPaGauge * processToPs;
  const preferred = preferredPressures.map((bar) => bar * 1e5).find((p) => p >= needed * (1 - 1e-12));
  return preferred ?? Math.ceil(needed / pressureStepPa) * pressureStepPa;
};

/** The special vessels that would answer an inquiry of one set, one for each material of which specials are made. */
export const specialVesselsFor = (system: System): readonly SpecialVessel[] => {
  if (system.sets.length !== 1) return [];
  const conditions = conditionsOf(system, 0);
  const { pressureMaxPaGauge, temperatureMaxK, vesselVolumeM3, hotVolumeM3, batchVolumeM3, fillLimit } =
    conditions;
  const volumeM3 = vesselVolumeM3 ?? (hotVolumeM3 ?? batchVolumeM3 ?? 0) / fillLimit;
  if (pressureMaxPaGauge === undefined || volumeM3 <= 0) return [];
  return specialMaterials.map((material) => ({
    set: 0,
    volumeL: Number((volumeM3 * 1000).toPrecision(2)),
    pressurePaGauge: psFor(pressureMaxPaGauge),
    maxTemperatureK:
      Math.ceil(((temperatureMaxK ?? 293.15) - 273.15) / temperatureStepK) * temperatureStepK + 273.15,
    material,
  }));
};

/**
 * The same inquiry answered with a special vessel, one document for each. Only the vessel is special; whether the rest
 * of the range carries it, the rules decide.
 */
export const specialDocuments = (document: SystemInput, system: System): readonly SystemInput[] =>
  specialVesselsFor(system).map((special) => ({ ...document, specials: [special] }));
