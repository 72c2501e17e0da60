import { type CalculationError, type Outcome, succeed } from '@flangewise/model';
import { normalAtmospherePa } from '@flangewise/quantities';
import { z } from 'zod';
import { quantity, type StepLog } from '../calculation.js';
import { shown } from '../shown.js';
import { fireHeat } from './fire-heat.js';
import { gasArea } from './gas-area.js';
import { liquidArea } from './liquid-area.js';
import {
  compressibilityFactor,
  discCoefficient,
  drainage,
  environmentFactor,
  isentropicExponent,
  molarMassKgPerMol,
  wettedAreaM2,
} from './relief-fields.js';

/** Inputs of the fire and expansion scenarios; all may be absent. */
export const scenarioFields = {
  wettedAreaM2: wettedAreaM2.optional(),
  drainage: drainage.optional(),
  environmentFactor: environmentFactor.optional(),
  heatOfVaporisationJPerKg: quantity(
    { unit: 'J/kg', symbol: 'h_v', description: 'Heat of vaporisation at the relieving pressure' },
    z.number().min(1e4).max(3e6),
  ).optional(),
  vapourMolarMassKgPerMol: molarMassKgPerMol.optional(),
  vapourIsentropicExponent: isentropicExponent.optional(),
  vapourCompressibilityFactor: compressibilityFactor.optional(),
  heatInputW: quantity(
    { unit: 'W', symbol: 'Q', description: 'Heat input to the blocked-in liquid' },
    z.number().min(0),
  ).optional(),
  liquidExpansionPerK: quantity(
    { unit: '1/K', symbol: 'β', description: 'Cubic expansion of the liquid' },
    z.number().min(0).max(0.05),
  ).optional(),
  liquidHeatCapacityJPerKgK: quantity(
    { unit: 'J/(kg.K)', symbol: 'c_p', description: 'Heat capacity of the liquid' },
    z.number().min(100).max(20_000),
  ).optional(),
  liquidDensityKgPerM3: quantity(
    { unit: 'kg/m3', symbol: 'ρ', description: 'Density of the liquid' },
    z.number().min(50).max(25_000),
  ).optional(),
};

interface Relieving {
  readonly relievingPressurePaAbs: number;
  readonly backPressurePaAbs?: number | undefined;
  readonly dischargeCoefficient?: number | undefined;
  readonly relievingTemperatureK?: number | undefined;
}

type Given = z.output<z.ZodObject<typeof scenarioFields>> & Relieving;

interface Missing {
  readonly missing: string[];
}

const absent = (fields: Readonly<Record<string, unknown>>): Missing => ({
  missing: Object.keys(fields).filter((field) => fields[field] === undefined),
});

/**
 * Vapour boiled off by a fire, and the area that relieves it. Without a word on drainage it counts as inadequate,
 * the vessel as bare, the vapour as ideal: each the careful side.
 */
export const fireScenario = (
  given: Given,
  log?: StepLog,
): Outcome<
  Missing | { readonly heatW: number; readonly massFlowKgPerS: number; readonly areaM2: number },
  CalculationError
> => {
  const { heatOfVaporisationJPerKg, vapourMolarMassKgPerMol, vapourIsentropicExponent } = given;
  const { relievingTemperatureK, backPressurePaAbs } = given;
  if (
    given.wettedAreaM2 === undefined ||
    heatOfVaporisationJPerKg === undefined ||
    vapourMolarMassKgPerMol === undefined ||
    vapourIsentropicExponent === undefined ||
    relievingTemperatureK === undefined
  ) {
    return succeed(
      absent({
        wettedAreaM2: given.wettedAreaM2,
        heatOfVaporisationJPerKg,
        vapourMolarMassKgPerMol,
        vapourIsentropicExponent,
        relievingTemperatureK,
      }),
    );
  }
  const heat = fireHeat.compute(
    {
      wettedAreaM2: given.wettedAreaM2,
      environmentFactor: given.environmentFactor ?? 1,
      drainage: given.drainage ?? 'inadequate',
    },
    log,
  );
  if (!heat.ok) return heat;
  const massFlowKgPerS = heat.value.heatW / heatOfVaporisationJPerKg;
  log?.({
    symbol: 'W_f',
    formula: 'Q_f / h_v',
    substituted: `${shown(heat.value.heatW)} / ${shown(heatOfVaporisationJPerKg)}`,
    value: massFlowKgPerS,
    unit: 'kg/s',
  });
  const area = gasArea.compute(
    {
      massFlowKgPerS,
      temperatureK: relievingTemperatureK,
      compressibilityFactor: given.vapourCompressibilityFactor ?? 1,
      molarMassKgPerMol: vapourMolarMassKgPerMol,
      isentropicExponent: vapourIsentropicExponent,
      inletPressurePaAbs: given.relievingPressurePaAbs,
      dischargeCoefficient: given.dischargeCoefficient ?? discCoefficient,
      ...(backPressurePaAbs === undefined ? {} : { backPressurePaAbs }),
    },
    log,
  );
  if (!area.ok) return area;
  return succeed({ heatW: heat.value.heatW, massFlowKgPerS, areaM2: area.value.areaM2 });
};

/** Volume by which a blocked-in liquid grows while it is heated, and the area that relieves it. */
export const expansionScenario = (
  given: Given,
  log?: StepLog,
): Outcome<Missing | { readonly flowM3PerS: number; readonly areaM2: number }, CalculationError> => {
  const { heatInputW, liquidExpansionPerK, liquidHeatCapacityJPerKgK, liquidDensityKgPerM3 } = given;
  if (
    heatInputW === undefined ||
    liquidExpansionPerK === undefined ||
    liquidHeatCapacityJPerKgK === undefined ||
    liquidDensityKgPerM3 === undefined
  ) {
    return succeed(
      absent({ heatInputW, liquidExpansionPerK, liquidHeatCapacityJPerKgK, liquidDensityKgPerM3 }),
    );
  }
  const flowM3PerS = (liquidExpansionPerK * heatInputW) / (liquidDensityKgPerM3 * liquidHeatCapacityJPerKgK);
  log?.({
    symbol: 'Q_e',
    formula: 'β Q / (ρ c_p)',
    substituted: `${shown(liquidExpansionPerK)} × ${shown(heatInputW)} / (${shown(liquidDensityKgPerM3)} × ${shown(liquidHeatCapacityJPerKgK)})`,
    value: flowM3PerS,
    unit: 'm3/s',
  });
  const area = liquidArea.compute(
    {
      flowM3PerS,
      relativeDensity: liquidDensityKgPerM3 / 999,
      inletPressurePaGauge: given.relievingPressurePaAbs - normalAtmospherePa,
      backPressurePaGauge: (given.backPressurePaAbs ?? normalAtmospherePa) - normalAtmospherePa,
      dischargeCoefficient: given.dischargeCoefficient ?? discCoefficient,
    },
    log,
  );
  if (!area.ok) return area;
  return succeed({ flowM3PerS, areaM2: area.value.areaM2 });
};
