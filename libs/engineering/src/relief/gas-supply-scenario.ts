import { type CalculationError, type Outcome, succeed } from '@flangewise/model';
import type { StepLog } from '../calculation.js';
import { gasArea } from './gas-area.js';
import { regulatorFailedOpenFlow } from './regulator-failed-open-flow.js';
import { discCoefficient } from './relief-fields.js';

export interface GasSupply {
  readonly relievingPressurePaAbs: number;
  readonly backPressurePaAbs?: number | undefined;
  readonly dischargeCoefficient?: number | undefined;
  readonly relievingTemperatureK?: number | undefined;
  readonly supplyPressurePaAbs: number;
  readonly flowCoefficientKv: number;
  readonly pressureDropRatioFactor: number;
  readonly gasTemperatureK: number;
  readonly gasMolarMassKgPerMol: number;
  readonly gasIsentropicExponent: number;
  readonly gasCompressibilityFactor: number;
}

/**
 * Inflow through a regulator failed open, and the area that lets it out again at the relieving pressure. A supply
 * that cannot exceed the relieving pressure gives no inflow. Gas that leaves a hot vessel is taken at its temperature.
 */
export const gasSupplyScenario = (
  supply: GasSupply,
  log?: StepLog,
): Outcome<{ readonly massFlowKgPerS: number; readonly areaM2: number }, CalculationError> => {
  const { relievingPressurePaAbs, supplyPressurePaAbs, backPressurePaAbs } = supply;
  const gas = {
    molarMassKgPerMol: supply.gasMolarMassKgPerMol,
    isentropicExponent: supply.gasIsentropicExponent,
    compressibilityFactor: supply.gasCompressibilityFactor,
  };
  const inflow =
    supplyPressurePaAbs <= relievingPressurePaAbs
      ? succeed({ massFlowKgPerS: 0 })
      : regulatorFailedOpenFlow.compute(
          {
            ...gas,
            temperatureK: supply.gasTemperatureK,
            upstreamPressurePaAbs: supplyPressurePaAbs,
            downstreamPressurePaAbs: relievingPressurePaAbs,
            flowCoefficientKv: supply.flowCoefficientKv,
            pressureDropRatioFactor: supply.pressureDropRatioFactor,
          },
          log,
        );
  if (!inflow.ok) return inflow;
  const area = gasArea.compute(
    {
      ...gas,
      massFlowKgPerS: inflow.value.massFlowKgPerS,
      temperatureK: Math.max(supply.gasTemperatureK, supply.relievingTemperatureK ?? 0),
      inletPressurePaAbs: relievingPressurePaAbs,
      dischargeCoefficient: supply.dischargeCoefficient ?? discCoefficient,
      ...(backPressurePaAbs === undefined ? {} : { backPressurePaAbs }),
    },
    log,
  );
  if (!area.ok) return area;
  return succeed({ massFlowKgPerS: inflow.value.massFlowKgPerS, areaM2: area.value.areaM2 });
};
