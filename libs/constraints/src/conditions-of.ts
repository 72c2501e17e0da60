import type { Inquiry, System } from '@flangewise/model';
import { absoluteToGauge } from '@flangewise/quantities';
import { requiredMarking } from './required-marking.js';
import type { ConditionMedium, Conditions } from './conditions.js';
import { fillTemperatureK, hotVolumeOf, mainLiquid, propertiesAt, vapourPressureAt } from './liquid.js';
import { readMedium } from './read-media.js';

/** Largest hot fill by default (common practice of this maker); foaming media get more room. */
const usualFillLimit = 0.85;
const foamingFillLimit = 0.6;
const usualServiceFactor = 1.25;
/** A lowest pressure below this is a vacuum, not the weather [Pa, gauge]. */
const vacuumFromPaGauge = -5000;

/** Kinds of process that give heat unless somebody says otherwise. */
const exothermicKinds: readonly string[] = [
  'hydrogenation',
  'polymerisation',
  'oxidation',
  'chlorination',
  'carbonylation',
];

/** As many ports as are to stay free, by the least size of each. */
const freePorts = (
  asked: { readonly count: number; readonly size?: number | undefined } | undefined,
): readonly number[] | undefined =>
  asked === undefined ? undefined : Array.from({ length: asked.count }, () => asked.size ?? 0);

type Draft = { -readonly [K in keyof Conditions]: Conditions[K] | undefined };

/** Leaves out what nobody said. */
const settled = (draft: Draft): Conditions =>
  Object.fromEntries(
    Object.entries(draft).filter(([, value]) => value !== undefined),
  ) as unknown as Conditions;

type Liquid = Pick<
  Draft,
  'hotVolumeM3' | 'hotVolumeEstimated' | 'densityKgPerM3' | 'heatCapacityJPerKgK' | 'boilingPointK'
> & { readonly vapourPaAbs: number | undefined };

const noLiquid: Liquid = {
  hotVolumeM3: undefined,
  hotVolumeEstimated: undefined,
  vapourPaAbs: undefined,
  densityKgPerM3: undefined,
  heatCapacityJPerKgK: undefined,
  boilingPointK: undefined,
};

/** The main liquid as it is filled, and what it becomes at the highest temperature. */
const liquidAt = (
  media: readonly ConditionMedium[],
  temperatures: { readonly fillK: number; readonly hotK: number | undefined },
  batchM3: number | undefined,
): Liquid => {
  const liquid = mainLiquid(media);
  if (liquid === undefined) return noLiquid;
  const { fillK, hotK } = temperatures;
  const cold = propertiesAt(liquid, fillK);
  // Heating and cooling pass through all temperatures between.
  const mean = propertiesAt(liquid, (fillK + Math.max(fillK, hotK ?? fillK)) / 2) ?? cold;
  const hot =
    batchM3 === undefined || hotK === undefined
      ? undefined
      : hotVolumeOf(liquid, { volumeM3: batchM3, fillK, hotK });
  return {
    hotVolumeM3: hot?.volumeM3,
    hotVolumeEstimated: hot?.estimated === true ? true : undefined,
    vapourPaAbs: hotK === undefined ? undefined : vapourPressureAt(liquid, hotK),
    densityKgPerM3: cold?.densityKgPerM3,
    heatCapacityJPerKgK: mean?.heatCapacityJPerKgK ?? cold?.heatCapacityJPerKgK,
    boilingPointK: cold?.normalBoilingPointK,
  };
};

/** Total pressure: as stated, with the vapour on top where the gas alone was meant; at least the liquid's own. */
const totalPressure = (
  statedPaGauge: number | undefined,
  means: string | undefined,
  vapourPaAbs: number | undefined,
) => {
  if (statedPaGauge === undefined)
    return vapourPaAbs === undefined ? undefined : Math.max(0, absoluteToGauge(vapourPaAbs));
  if (vapourPaAbs === undefined) return statedPaGauge;
  if (means === 'partial pressure of the gas') return statedPaGauge + vapourPaAbs;
  return Math.max(statedPaGauge, absoluteToGauge(vapourPaAbs));
};

const peakHeat = (process: Inquiry['process']): number | undefined =>
  process.peakUptake === undefined || process.heatOfReaction === undefined
    ? undefined
    : Math.max(0, -process.heatOfReaction) * process.peakUptake;

const isExothermic = (process: Inquiry['process']): boolean | undefined => {
  if (process.exothermic !== undefined) return process.exothermic;
  if (process.heatOfReaction !== undefined) return process.heatOfReaction < 0;
  return process.kind !== undefined && exothermicKinds.includes(process.kind) ? true : undefined;
};

const highest = (values: readonly (number | undefined)[]): number | undefined => {
  const said = values.filter((v) => v !== undefined);
  return said.length === 0 ? undefined : Math.max(...said);
};

const lowest = (values: readonly (number | undefined)[]): number | undefined => {
  const said = values.filter((v) => v !== undefined);
  return said.length === 0 ? undefined : Math.min(...said);
};

/**
 * A volume of which nobody said what it is counts as the batch, which asks for the larger vessel; where nothing but
 * gases is charged there is no batch, and it is the vessel.
 */
const volumesOf = (set: Inquiry['sets'][number] | undefined, media: readonly ConditionMedium[]) => {
  const stated = set?.statedVolume;
  const onlyGas = media.length > 0 && media.every((m) => m.role === 'gas' || m.role === 'inert gas');
  const isUnclear = set?.batchVolume === undefined && set?.vesselVolume === undefined;
  return {
    batchVolumeM3: set?.batchVolume ?? (isUnclear && !onlyGas ? stated : undefined),
    vesselVolumeM3: set?.vesselVolume ?? (isUnclear && onlyGas ? stated : undefined),
  };
};

/** What set number `index` has to stand, from what the inquiry says of it and of all sets. */
export const conditionsOf = (
  system: Pick<System, 'inquiry' | 'settings' | 'sets'>,
  index: number,
): Conditions => {
  const { inquiry, settings } = system;
  const { process, site, requirements } = inquiry;
  const set = inquiry.sets[index] ?? inquiry.sets[0];
  const media = process.media.map(readMedium);
  const gases = media.filter((m) => m.role === 'gas' || m.role === 'inert gas').map((m) => m.name);
  const pressure = { ...process.pressure, ...set?.pressure };
  const temperature = { ...process.temperature, ...set?.temperature };
  const volumes = volumesOf(set, media);
  const { batchVolumeM3 } = volumes;
  const liquid = liquidAt(
    media,
    { fillK: fillTemperatureK(temperature.lowest), hotK: temperature.highest },
    batchVolumeM3,
  );
  const ignition = requiredMarking(site.zone, media, site.zoneGas);
  return settled({
    media,
    gases,
    processKind: process.kind,
    statedPressurePaGauge: pressure.highest,
    pressureMeans: process.pressureMeans,
    pressureMaxPaGauge: totalPressure(pressure.highest, process.pressureMeans, liquid.vapourPaAbs),
    vacuum: (pressure.lowest ?? 0) < vacuumFromPaGauge ? true : process.vacuum,
    temperatureMinK: temperature.lowest,
    temperatureUsualK: temperature.usual,
    temperatureMaxK: temperature.highest,
    batchVolumeM3,
    hotVolumeM3: liquid.hotVolumeM3,
    hotVolumeEstimated: liquid.hotVolumeEstimated,
    vesselVolumeM3: volumes.vesselVolumeM3,
    fillLimit: settings.fillLimit ?? (process.foaming === true ? foamingFillLimit : usualFillLimit),
    viscosityMinPaS: lowest([process.viscosity?.start, process.viscosity?.end]),
    viscosityMaxPaS: highest([process.viscosity?.start, process.viscosity?.end]),
    densityKgPerM3: process.density ?? liquid.densityKgPerM3,
    heatCapacityJPerKgK: liquid.heatCapacityJPerKgK,
    boilingPointK: liquid.boilingPointK,
    solidsMassFraction: process.solids?.massFraction,
    particleSizeM: process.solids?.particleSize,
    solidDensityKgPerM3: process.solids?.density,
    speedMinPerS: process.stirringSpeed?.lowest,
    speedMaxPerS: process.stirringSpeed?.highest ?? process.stirringSpeed?.usual,
    serviceFactor: settings.serviceFactor ?? usualServiceFactor,
    exothermic: isExothermic(process),
    selfReactive: process.selfReactive,
    calorimetry: process.calorimetry,
    peakHeatW: peakHeat(process),
    peakUptakeMolPerS: process.peakUptake,
    heatOfReactionJPerMol: process.heatOfReaction,
    heatOfReactionPer: process.heatOfReactionPer,
    concentrationMolPerM3: process.concentration,
    heatUpTimeS: process.heatUpTime,
    supplyPressurePaGauge: process.supplyPressure,
    regulatorKv: process.regulatorKv,
    zone: site.zone,
    marking: ignition.marking,
    ignitionUnknown: ignition.unknown.length === 0 ? undefined : ignition.unknown,
    ceilingHeightM: site.ceilingHeight,
    country: site.country,
    construction: set?.construction,
    material: set?.material,
    families: requirements.families,
    noMetalContact: requirements.noMetalContact,
    seeInside: requirements.seeInside,
    bottomOutlet: requirements.bottomOutlet,
    openingsPerDay: requirements.openingsPerDay,
    uptakeRecorded: requirements.uptakeRecorded,
    inerting: requirements.inerting,
    tilt: requirements.tilt,
    sampling: requirements.sampling,
    dosingAgainstPressure: requirements.dosingAgainstPressure,
    refluxCondenser: requirements.refluxCondenser,
    catalystBasket: requirements.catalystBasket,
    processProbes: requirements.processProbes,
    freePortsM: freePorts(requirements.freePorts),
    impeller: requirements.impeller,
    materialCertificates: requirements.materialCertificates,
    qualificationPapers: requirements.qualificationPapers,
    vesselsAtOnce:
      inquiry.arrangement === 'alternate'
        ? Math.max(...system.sets.map((s) => s.count))
        : system.sets.reduce((n, s) => n + s.count, 0),
    arrangement: inquiry.arrangement,
  });
};
