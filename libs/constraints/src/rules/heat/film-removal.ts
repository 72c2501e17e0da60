import {
  coilInsideCoefficient,
  coilOutsideCoefficient,
  heatTransferFluid,
  jacketFilm,
  materialConductivity,
  overallCoefficientBand,
  removableHeat,
  vesselFilm,
} from '@flangewise/engineering';
import type { ItemOf } from '@flangewise/model';
import { type Proof, reckon } from '../../figure.js';
import { wettedJacketM2 } from './lower-coefficients.js';
import { coolingPowerAt, tapWater, waterFlowKgPerS } from './removable.js';

/** Both sides together [m²·K/W], nozzle of the jacket [m], and how far its inlet is below the batch [K] (common practice). */
const foulingM2KPerW = 2e-4;
const jacketNozzleM = 0.015;
const jacketBelowBatchK = 40;
/** Properties of tap water on its way through, near 25 °C. */
const water = { viscosityPaS: 0.9e-3, conductivityWPerMK: 0.6 } as const;
/** Published scatter of the coil correlations on either side. */
const scatter = 0.25;

/** The batch at its temperature, stirred. */
export interface StirredBatch {
  readonly temperatureK: number;
  readonly densityKgPerM3: number;
  readonly viscosityPaS: number;
  readonly heatCapacityJPerKgK: number;
  readonly conductivityWPerMK: number;
  readonly speedPerS: number;
  readonly volumeM3: number;
}

export interface FilmParts {
  readonly vessel: Pick<
    ItemOf<'vessel'>,
    'geometry' | 'jacket' | 'construction' | 'material' | 'innerVolumeL' | 'liningThicknessM'
  >;
  readonly stirrer: Pick<ItemOf<'stirrer'>, 'impeller' | 'diameterM'>;
  readonly coil: Pick<ItemOf<'coil'>, 'areaM2' | 'tubeDiameterM' | 'coilDiameterM' | 'material'> | null;
  readonly circulator: Pick<ItemOf<'circulator'>, 'coolingPowerW' | 'minTemperatureK' | 'flowM3PerS'> | null;
  readonly fluid: Pick<ItemOf<'fluid'>, 'fluid'> | null;
}

/** What one way of cooling takes away at the lower end of its band. */
export interface Removal {
  readonly what: string;
  readonly lower: number;
  readonly upper: number;
  readonly areaM2: number;
  readonly removedW: number;
}

const conductivityOf = (material: string): number | undefined => {
  const found = materialConductivity(material);
  return found.ok ? found.value.value : undefined;
};

export const filmRemovalByCoil = (
  { vessel, stirrer, coil }: FilmParts,
  batch: StirredBatch,
  proof: Proof | undefined,
): Removal | undefined => {
  if (coil === null || batch.temperatureK <= tapWater.inletK) return undefined;
  const wallConductivityWPerMK = conductivityOf(coil.material);
  const tubeInnerDiameterM = coil.tubeDiameterM - 2 * tapWater.tubeWallM;
  if (wallConductivityWPerMK === undefined || tubeInnerDiameterM <= 0) return undefined;
  const outside = reckon(
    coilOutsideCoefficient,
    {
      vesselDiameterM: vessel.geometry.innerDiameterM,
      impellerDiameterM: stirrer.diameterM,
      speedPerS: batch.speedPerS,
      densityKgPerM3: batch.densityKgPerM3,
      viscosityPaS: batch.viscosityPaS,
      wallViscosityPaS: batch.viscosityPaS,
      heatCapacityJPerKgK: batch.heatCapacityJPerKgK,
      conductivityWPerMK: batch.conductivityWPerMK,
    },
    proof,
  );
  const flowKgPerS = waterFlowKgPerS(coil.tubeDiameterM);
  const inside = reckon(
    coilInsideCoefficient,
    {
      tubeInnerDiameterM,
      coilDiameterM: coil.coilDiameterM,
      massFluxKgPerM2S: tapWater.densityKgPerM3 * tapWater.velocityMPerS,
      viscosityPaS: water.viscosityPaS,
      heatCapacityJPerKgK: tapWater.heatCapacityJPerKgK,
      conductivityWPerMK: water.conductivityWPerMK,
    },
    proof,
  );
  // A tube too narrow for turbulent water has no film on file.
  if (!outside.ok || !inside.ok) return undefined;
  const insideW = inside.value.coefficientWPerM2K;
  const outsideW = outside.value.coefficientWPerM2K;
  const band = reckon(
    overallCoefficientBand,
    {
      firstLowerWPerM2K: outsideW * (1 - scatter),
      firstUpperWPerM2K: outsideW * (1 + scatter),
      secondLowerWPerM2K: insideW * (1 - scatter),
      secondUpperWPerM2K: insideW * (1 + scatter),
      wallThicknessM: tapWater.tubeWallM,
      wallConductivityWPerMK,
      foulingResistanceM2KPerW: foulingM2KPerW,
    },
    proof,
  );
  if (!band.ok) return undefined;
  const removed = reckon(
    removableHeat,
    {
      lowerCoefficientWPerM2K: band.value.lowerCoefficientWPerM2K,
      areaM2: coil.areaM2,
      batchTemperatureK: batch.temperatureK,
      mediumInletTemperatureK: tapWater.inletK,
      mediumFlowKgPerS: flowKgPerS,
      mediumHeatCapacityJPerKgK: tapWater.heatCapacityJPerKgK,
      mediumIsWater: true,
    },
    proof,
  );
  return removed.ok
    ? {
        what: 'coil',
        lower: band.value.lowerCoefficientWPerM2K,
        upper: band.value.upperCoefficientWPerM2K,
        areaM2: coil.areaM2,
        removedW: removed.value.removableW,
      }
    : undefined;
};

export const filmRemovalByJacket = (
  { vessel, stirrer, circulator, fluid }: FilmParts,
  batch: StirredBatch,
  proof: Proof | undefined,
): Removal | undefined => {
  const { jacket, geometry } = vessel;
  if (jacket === null || circulator === null || fluid === null) return undefined;
  const inletK = Math.max(circulator.minTemperatureK, batch.temperatureK - jacketBelowBatchK);
  const wallConductivityWPerMK = conductivityOf(vessel.material);
  const oil = reckon(heatTransferFluid, { fluid: fluid.fluid, temperatureK: inletK }, proof);
  const coolingPowerW = coolingPowerAt(circulator.coolingPowerW, inletK);
  if (!oil.ok || wallConductivityWPerMK === undefined || inletK >= batch.temperatureK || coolingPowerW <= 0)
    return undefined;
  const inside = reckon(
    vesselFilm,
    {
      impeller: stirrer.impeller,
      vesselDiameterM: geometry.innerDiameterM,
      impellerDiameterM: stirrer.diameterM,
      speedPerS: batch.speedPerS,
      densityKgPerM3: batch.densityKgPerM3,
      viscosityPaS: batch.viscosityPaS,
      heatCapacityJPerKgK: batch.heatCapacityJPerKgK,
      conductivityWPerMK: batch.conductivityWPerMK,
    },
    proof,
  );
  const vesselOuterDiameterM = geometry.innerDiameterM + 2 * geometry.wallThicknessM;
  const mediumFlowKgPerS = (circulator.flowM3PerS / 2) * oil.value.densityKgPerM3;
  const outside = reckon(
    jacketFilm,
    {
      vesselOuterDiameterM,
      jacketInnerDiameterM: vesselOuterDiameterM + 2 * jacket.gapM,
      jacketHeightM: Math.max(geometry.cylinderLengthM - geometry.flangeHeightM, 0.01),
      inletDiameterM: jacketNozzleM,
      mediumFlowKgPerS,
      densityKgPerM3: oil.value.densityKgPerM3,
      heatCapacityJPerKgK: oil.value.heatCapacityJPerKgK,
      conductivityWPerMK: oil.value.conductivityWPerMK,
      viscosityPaS: oil.value.viscosityPaS,
      inlet: 'radial',
    },
    proof,
  );
  if (!inside.ok || !outside.ok) return undefined;
  const isLined = vessel.construction === 'lined';
  const band = reckon(
    overallCoefficientBand,
    {
      firstLowerWPerM2K: inside.value.lowerCoefficientWPerM2K,
      firstUpperWPerM2K: inside.value.upperCoefficientWPerM2K,
      secondLowerWPerM2K: outside.value.lowerCoefficientWPerM2K,
      secondUpperWPerM2K: outside.value.upperCoefficientWPerM2K,
      // A lining resists far more than the steel that carries it.
      wallThicknessM: isLined
        ? (vessel.liningThicknessM ?? geometry.wallThicknessM)
        : geometry.wallThicknessM,
      wallConductivityWPerMK,
      foulingResistanceM2KPerW: foulingM2KPerW,
    },
    proof,
  );
  const areaM2 = wettedJacketM2(vessel, batch.volumeM3);
  if (!band.ok || areaM2 <= 0) return undefined;
  const removed = reckon(
    removableHeat,
    {
      lowerCoefficientWPerM2K: band.value.lowerCoefficientWPerM2K,
      areaM2,
      batchTemperatureK: batch.temperatureK,
      mediumInletTemperatureK: inletK,
      mediumFlowKgPerS,
      mediumHeatCapacityJPerKgK: oil.value.heatCapacityJPerKgK,
      coolingPowerW,
    },
    proof,
  );
  return removed.ok
    ? {
        what: 'jacket',
        lower: band.value.lowerCoefficientWPerM2K,
        upper: band.value.upperCoefficientWPerM2K,
        areaM2,
        removedW: removed.value.removableW,
      }
    : undefined;
};
