import { type CalculationError, type Outcome, succeed } from '@flangewise/model';
import { normalAtmospherePa } from '@flangewise/quantities';
import type { StepLog } from '../calculation.js';
import { shown } from '../shown.js';
import { liquidArea } from './liquid-area.js';
import { discCoefficient } from './relief-fields.js';
import { absent, type Missing, type ScenarioInputs } from './scenario-fields.js';

/** Volume by which a blocked-in liquid grows while it is heated, and the area that relieves it. */
export const expansionScenario = (
  given: ScenarioInputs,
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
