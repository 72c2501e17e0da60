import { describe, expect, it } from 'vitest';
import { findFluid } from '../fluid/fluid-data.js';
import { fluidProperty } from '../fluid/fluid-property.js';
import { type GasEquation, gasEquations } from './gas-equation-data.js';
import { gasSideDensity } from './gas-side-density.js';
import { residualDerivatives } from './residual-helmholtz.js';

interface Claim {
  readonly temperatureK: number;
  readonly pressurePaAbs: number;
  readonly liquidGuess: number;
}

/**
 * By how much a vapour pressure misses that of the equation, by Maxwell's equal areas:
 * ∫ (p(ρ) − p_v)/ρ² dρ from vapour to liquid, over p_v (1/ρ_v − 1/ρ_l).
 */
const missesBy = (equation: GasEquation, { temperatureK, pressurePaAbs, liquidGuess }: Claim): number => {
  const RT = equation.gasConstantJPerMolK * temperatureK;
  const derivatives = residualDerivatives(equation, temperatureK);
  const pressure = (density: number): number =>
    density * RT * (1 + derivatives(density / equation.reducingDensityMolPerM3).first);
  const gas = gasSideDensity(equation, { pressurePaAbs, temperatureK });
  if (!gas.ok) throw new Error(gas.error.message);
  let liquid = liquidGuess;
  for (let step = 0; step < 50; step += 1) {
    const { first, second } = derivatives(liquid / equation.reducingDensityMolPerM3);
    liquid -= (pressure(liquid) - pressurePaAbs) / (RT * (1 + 2 * first + second));
  }
  const intervals = 20_000;
  const [from, to] = [Math.log(gas.value), Math.log(liquid)];
  const width = (to - from) / intervals;
  let area = 0;
  for (let index = 0; index <= intervals; index += 1) {
    const density = Math.exp(from + index * width);
    const weight = index === 0 || index === intervals ? 1 : index % 2 === 0 ? 2 : 4;
    area += (weight * (pressure(density) - pressurePaAbs)) / density;
  }
  return -(area * width) / 3 / (pressurePaAbs * (1 / gas.value - 1 / liquid));
};

const cases = gasEquations
  .filter(({ cas }) => findFluid(cas).ok)
  .flatMap((equation) => [0.7, 0.85].map((share) => [equation.gas, share, equation] as const));

describe('reference equations and tabulated liquids agree on the saturation line', () => {
  it.each(cases)('%s at %d of the critical temperature', (_gas, share, equation) => {
    const fluid = findFluid(equation.cas);
    if (!fluid.ok) throw new Error(fluid.error.message);
    const temperatureK = Math.max(
      share * equation.criticalTemperatureK,
      (fluid.value.meltingPointK ?? 0) + 1,
    );
    const saturation = fluidProperty(fluid.value, 'vapourPressure', { temperatureK });
    const density = fluidProperty(fluid.value, 'liquidDensity', { temperatureK });
    if (!saturation.ok || !density.ok) throw new Error('not tabulated');
    const liquidGuess = density.value / equation.molarMassKgPerMol;
    const claim = { temperatureK, pressurePaAbs: saturation.value, liquidGuess };
    expect(Math.abs(missesBy(equation, claim))).toBeLessThan(0.007);
  });
});
