import { type CalculationError, type Outcome, succeed } from '@flangewise/model';
import type { StepLog } from '../calculation.js';
import { shown } from '../shown.js';
import { fireHeat } from './fire-heat.js';
import { gasArea } from './gas-area.js';
import { discCoefficient } from './relief-fields.js';
import { absent, type Missing, type ScenarioInputs } from './scenario-fields.js';

export interface Boiling {
  readonly heatW: number;
  readonly massFlowKgPerS: number;
  readonly areaM2: number;
}

interface Vapour {
  readonly heatOfVaporisationJPerKg: number;
  readonly vapourMolarMassKgPerMol: number;
  readonly vapourIsentropicExponent: number;
  readonly relievingTemperatureK: number;
}

/** The vapour of the inputs, or undefined where one of its fields is absent. */
const vapourOf = ({
  heatOfVaporisationJPerKg,
  vapourMolarMassKgPerMol,
  vapourIsentropicExponent,
  relievingTemperatureK,
}: ScenarioInputs): Vapour | undefined =>
  heatOfVaporisationJPerKg === undefined ||
  vapourMolarMassKgPerMol === undefined ||
  vapourIsentropicExponent === undefined ||
  relievingTemperatureK === undefined
    ? undefined
    : {
        heatOfVaporisationJPerKg,
        vapourMolarMassKgPerMol,
        vapourIsentropicExponent,
        relievingTemperatureK,
      };

/** What the vapour of a scenario lacks, with the field that is the scenario's own. */
const absentVapour = (given: ScenarioInputs, own: Readonly<Record<string, unknown>>): Missing =>
  absent({
    ...own,
    heatOfVaporisationJPerKg: given.heatOfVaporisationJPerKg,
    vapourMolarMassKgPerMol: given.vapourMolarMassKgPerMol,
    vapourIsentropicExponent: given.vapourIsentropicExponent,
    relievingTemperatureK: given.relievingTemperatureK,
  });

/** Vapour that a heat makes at the relieving pressure, and the area that lets it out. Without a word it counts as ideal. */
const boiledBy = (
  { heatW, symbol }: { readonly heatW: number; readonly symbol: 'f' | 'h' },
  { given, vapour }: { readonly given: ScenarioInputs; readonly vapour: Vapour },
  log?: StepLog,
): Outcome<Boiling, CalculationError> => {
  const { backPressurePaAbs } = given;
  const massFlowKgPerS = heatW / vapour.heatOfVaporisationJPerKg;
  log?.({
    symbol: `W_${symbol}`,
    formula: symbol === 'f' ? 'Q_f / h_v' : 'P / h_v',
    substituted: `${shown(heatW)} / ${shown(vapour.heatOfVaporisationJPerKg)}`,
    value: massFlowKgPerS,
    unit: 'kg/s',
  });
  const area = gasArea.compute(
    {
      massFlowKgPerS,
      temperatureK: vapour.relievingTemperatureK,
      compressibilityFactor: given.vapourCompressibilityFactor ?? 1,
      molarMassKgPerMol: vapour.vapourMolarMassKgPerMol,
      isentropicExponent: vapour.vapourIsentropicExponent,
      inletPressurePaAbs: given.relievingPressurePaAbs,
      dischargeCoefficient: given.dischargeCoefficient ?? discCoefficient,
      ...(backPressurePaAbs === undefined ? {} : { backPressurePaAbs }),
    },
    log,
  );
  return area.ok ? succeed({ heatW, massFlowKgPerS, areaM2: area.value.areaM2 }) : area;
};

/**
 * Vapour boiled off by a fire, and the area that relieves it. Without a word on drainage it counts as inadequate,
 * the vessel as bare: each the careful side.
 */
export const fireScenario = (
  given: ScenarioInputs,
  log?: StepLog,
): Outcome<Missing | Boiling, CalculationError> => {
  const vapour = vapourOf(given);
  if (given.wettedAreaM2 === undefined || vapour === undefined) {
    return succeed(absentVapour(given, { wettedAreaM2: given.wettedAreaM2 }));
  }
  const heat = fireHeat.compute(
    {
      wettedAreaM2: given.wettedAreaM2,
      environmentFactor: given.environmentFactor ?? 1,
      drainage: given.drainage ?? 'inadequate',
    },
    log,
  );
  return heat.ok ? boiledBy({ heatW: heat.value.heatW, symbol: 'f' }, { given, vapour }, log) : heat;
};

/**
 * Vapour of a volatile liquid whose heater stays on at full power, all of it boiling: what the temperature controller
 * failed to switch off. Losses are left out, the careful side.
 */
export const heaterScenario = (
  given: ScenarioInputs,
  log?: StepLog,
): Outcome<Missing | Boiling, CalculationError> => {
  const vapour = vapourOf(given);
  if (given.heaterPowerW === undefined || vapour === undefined) {
    return succeed(absentVapour(given, { heaterPowerW: given.heaterPowerW }));
  }
  return boiledBy({ heatW: given.heaterPowerW, symbol: 'h' }, { given, vapour }, log);
};
