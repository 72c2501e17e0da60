import {
  boilingTemperature,
  findFluid,
  heatOfVaporisation,
  vessel as vesselCalculation,
} from '@flangewise/engineering';
import type { ItemOf } from '@flangewise/model';
import type { ConditionMedium, Conditions } from '../../conditions.js';
import { type Proof, reckon } from '../../figure.js';
import { mainLiquid, propertiesAt } from '../../liquid.js';

type Vessel = Pick<ItemOf<'vessel'>, 'geometry' | 'innerVolumeL'>;

const water = '7732-18-5';

/** The careful side for the area of a vapour. */
const vapourIsentropicExponent = 1;

/** Wall wetted by the hot batch [m²]. */
const wettedAreaM2 = (
  { geometry, innerVolumeL }: Vessel,
  volumeM3: number,
  proof: Proof | undefined,
): number | undefined => {
  const shape = reckon(
    vesselCalculation,
    {
      innerDiameterM: geometry.innerDiameterM,
      cylinderLengthM: geometry.cylinderLengthM,
      wallThicknessM: geometry.wallThicknessM,
      endThicknessM: geometry.endThicknessM,
      form: geometry.endForm,
      densityKgPerM3: 1,
      fillVolumeM3: Math.min(volumeM3, (innerVolumeL / 1000) * 0.999),
    },
    proof,
  );
  return shape.ok ? shape.value.wettedAreaM2 : undefined;
};

/** Vapour that a fire makes of the liquid at the relieving pressure; nothing above its critical pressure. */
const vapourOf = (liquid: ConditionMedium, pressurePaAbs: number, proof: Proof | undefined) => {
  const isSolution = liquid.massFraction !== undefined && liquid.massFraction < 1;
  // Of a solution in water mostly water boils off.
  const substance = isSolution ? water : (liquid.cas ?? liquid.name);
  const fluid = findFluid(substance);
  const boiling = reckon(boilingTemperature, { substance, pressurePaAbs }, proof);
  if (!fluid.ok || !boiling.ok) return {};
  const heat = reckon(heatOfVaporisation, { substance, temperatureK: boiling.value.temperatureK }, proof);
  if (!heat.ok) return {};
  return {
    heatOfVaporisationJPerKg: heat.value.heatJPerKg,
    vapourMolarMassKgPerMol: fluid.value.molarMassKgPerMol,
    vapourIsentropicExponent,
    relievingTemperatureK: boiling.value.temperatureK,
  };
};

const expansionOf = (liquid: ConditionMedium, temperatureK: number, proof: Proof | undefined) => {
  const properties = propertiesAt(liquid, temperatureK, proof);
  const { thermalExpansionPerK, heatCapacityJPerKgK, densityKgPerM3 } = properties ?? {};
  return {
    ...(thermalExpansionPerK === undefined ? {} : { liquidExpansionPerK: thermalExpansionPerK }),
    ...(heatCapacityJPerKgK === undefined ? {} : { liquidHeatCapacityJPerKgK: heatCapacityJPerKgK }),
    ...(densityKgPerM3 === undefined ? {} : { liquidDensityKgPerM3: densityKgPerM3 }),
  };
};

interface Heated {
  readonly vessel: Vessel;
  readonly relievingPressurePaAbs: number;
  /** Power of mantle or circulator. */
  readonly heatInputW: number | undefined;
}

export const liquidConditions = ['media', 'batchVolumeM3', 'hotVolumeM3', 'temperatureMaxK'] as const;

/** What a fire and the heating do to the liquid, as far as the tables know it. */
export const liquidScenarios = (
  heated: Heated,
  conditions: Pick<Conditions, (typeof liquidConditions)[number]>,
  proof: Proof | undefined,
) => {
  const { media, batchVolumeM3, hotVolumeM3, temperatureMaxK } = conditions;
  const liquid = mainLiquid(media);
  const volumeM3 = hotVolumeM3 ?? batchVolumeM3;
  if (liquid === undefined) return {};
  const wetted = volumeM3 === undefined ? undefined : wettedAreaM2(heated.vessel, volumeM3, proof);
  return {
    // Gas leaves as hot as the vessel; the vapour of a fire as hot as it boils.
    ...(temperatureMaxK === undefined ? {} : { relievingTemperatureK: temperatureMaxK }),
    ...(wetted === undefined ? {} : { wettedAreaM2: wetted }),
    ...vapourOf(liquid, heated.relievingPressurePaAbs, proof),
    ...(heated.heatInputW === undefined ? {} : { heatInputW: heated.heatInputW }),
    ...(temperatureMaxK === undefined ? {} : expansionOf(liquid, temperatureMaxK, proof)),
  };
};
