import { fail, type Outcome, succeed } from '@flangewise/model';
import { type Fluid, findFluid } from '../fluid/fluid-data.js';
import { fluidProperty, propertyRange } from '../fluid/fluid-property.js';
import { molarGasConstant } from '../molar-gas-constant.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { findGasEquation, type GasEquation, gasEquations } from './gas-equation-data.js';
import { gasSideDensity } from './gas-side-density.js';
import { pengRobinsonFactor, pengRobinsonUncertainty } from './peng-robinson.js';

export interface GasCondition {
  readonly pressurePaAbs: number;
  readonly temperatureK: number;
}

export interface GasState {
  readonly name: string;
  readonly molarMassKgPerMol: number;
  readonly compressibilityFactor: number;
  readonly molarDensityMolPerM3: number;
  /** The equation of state behind it, for the evidence. */
  readonly equation: string;
  /** Half width of the expected band of Z, relative. */
  readonly relativeUncertainty: number;
}

/** Reference equations state 0.02 to 0.3 % in density for gases of industry; the upper end is carried. */
const referenceUncertainty = 0.003;

const condensation = (fluid: Fluid, { pressurePaAbs, temperatureK }: GasCondition): Outcome<undefined> => {
  const range = propertyRange(fluid, 'vapourPressure');
  if (range === undefined || temperatureK > range.maxTemperatureK) {
    const critical = fluid.criticalPoint?.temperatureK ?? 0;
    if (range === undefined && temperatureK < critical) {
      return outOfRange({
        field: 'temperatureK',
        given: temperatureK,
        unit: 'K',
        allowed: `above the critical temperature ${shown(critical)} K (${fluid.name})`,
      });
    }
    return succeed(undefined);
  }
  const saturation = fluidProperty(fluid, 'vapourPressure', { temperatureK });
  if (!saturation.ok) return saturation;
  return pressurePaAbs > saturation.value
    ? outOfRange({
        field: 'pressurePaAbs',
        given: pressurePaAbs,
        unit: 'Pa',
        allowed: `up to the vapour pressure ${shown(saturation.value)} Pa of ${fluid.name} at ${shown(temperatureK)} K; above it condenses`,
      })
    : succeed(undefined);
};

const fromEquation = (equation: GasEquation, condition: GasCondition): Outcome<GasState> => {
  const { pressurePaAbs, temperatureK } = condition;
  if (temperatureK > equation.maxTemperatureK) {
    return outOfRange({
      field: 'temperatureK',
      given: temperatureK,
      unit: 'K',
      allowed: `up to ${shown(equation.maxTemperatureK)} K (${equation.gas})`,
    });
  }
  if (pressurePaAbs > equation.maxPressurePa) {
    return outOfRange({
      field: 'pressurePaAbs',
      given: pressurePaAbs,
      unit: 'Pa',
      allowed: `up to ${shown(equation.maxPressurePa)} Pa (${equation.gas})`,
    });
  }
  if (temperatureK < equation.criticalTemperatureK) {
    const fluid = findFluid(equation.cas);
    if (!fluid.ok) {
      return outOfRange({
        field: 'temperatureK',
        given: temperatureK,
        unit: 'K',
        allowed: `above the critical temperature ${shown(equation.criticalTemperatureK)} K (${equation.gas})`,
      });
    }
    const gaseous = condensation(fluid.value, condition);
    if (!gaseous.ok) return gaseous;
  }
  const density = gasSideDensity(equation, condition);
  if (!density.ok) return density;
  return succeed({
    name: equation.gas,
    molarMassKgPerMol: equation.molarMassKgPerMol,
    compressibilityFactor: pressurePaAbs / (density.value * equation.gasConstantJPerMolK * temperatureK),
    molarDensityMolPerM3: density.value,
    equation: equation.source,
    relativeUncertainty: referenceUncertainty,
  });
};

const fromCubic = (fluid: Fluid, condition: GasCondition): Outcome<GasState> => {
  const gaseous = condensation(fluid, condition);
  if (!gaseous.ok) return gaseous;
  const factor = pengRobinsonFactor(fluid, condition);
  if (!factor.ok) return factor;
  const relativeUncertainty = pengRobinsonUncertainty(
    condition.pressurePaAbs / (fluid.criticalPoint?.pressurePaAbs ?? condition.pressurePaAbs),
  );
  return succeed({
    name: fluid.name,
    molarMassKgPerMol: fluid.molarMassKgPerMol,
    compressibilityFactor: factor.value,
    molarDensityMolPerM3:
      condition.pressurePaAbs / (factor.value * molarGasConstant * condition.temperatureK),
    equation: `Peng and Robinson (1976), expected within ± ${String(100 * relativeUncertainty)} %`,
    relativeUncertainty,
  });
};

/**
 * State of a gas: by the reference equation where there is one, else by Peng–Robinson with its band.
 *
 * @param gas       CAS number, name or alias
 * @param condition absolute pressure [Pa], temperature [K]
 * @error CALC_UNKNOWN_SUBSTANCE, CALC_MISSING_PROPERTY, CALC_OUT_OF_RANGE (also where it condenses), CALC_NOT_CONVERGED
 */
export const gasState = (gas: string, condition: GasCondition): Outcome<GasState> => {
  const equation = findGasEquation(gas);
  if (equation) return fromEquation(equation, condition);
  const fluid = findFluid(gas);
  if (fluid.ok) return fromCubic(fluid.value, condition);
  return fail({
    code: 'CALC_UNKNOWN_SUBSTANCE',
    message: `gas: "${gas}" given; no equation of state for it. Give a CAS number or one of: ${gasEquations.map((row) => row.gas).join(', ')}, or a fluid with a tabulated critical point`,
    field: 'gas',
    given: gas,
    allowed: 'CAS number or common name of a tabulated gas',
  });
};
