import { fail, type Outcome, succeed } from '@flangewise/model';
import { shown } from '../shown.js';
import type { GasEquation } from './gas-equation-data.js';
import { residualDerivatives } from './residual-helmholtz.js';

const maxIterations = 100;
const relativePrecision = 1e-12;

/**
 * Density of a gas from its reference equation: the root of p(ρ, T) = p next to the ideal gas.
 *
 *   p = ρ R T (1 + δ ∂αr/∂δ)
 *
 * Newton's method between brackets; the branch of the gas is left where ∂p/∂ρ ≤ 0.
 *
 * @param pressurePaAbs p [Pa]
 * @param temperatureK  T [K]
 * @returns ρ [mol/m³]
 * @range the caller has checked the range of the equation and that the gas does not condense
 * @error CALC_NOT_CONVERGED
 */
export const gasSideDensity = (
  equation: GasEquation,
  { pressurePaAbs, temperatureK }: { readonly pressurePaAbs: number; readonly temperatureK: number },
): Outcome<number> => {
  const RT = equation.gasConstantJPerMolK * temperatureK;
  const derivatives = residualDerivatives(equation, temperatureK);
  let low = 0;
  let high = Infinity;
  let density = Math.min(pressurePaAbs / RT, 3 * equation.reducingDensityMolPerM3);
  for (let iteration = 0; iteration < maxIterations; iteration += 1) {
    const { first, second } = derivatives(density / equation.reducingDensityMolPerM3);
    const excess = density * RT * (1 + first) - pressurePaAbs;
    const slope = RT * (1 + 2 * first + second);
    if (excess > 0 || slope <= 0) high = Math.min(high, density);
    else low = Math.max(low, density);
    const newton = density - excess / slope;
    const inside = slope > 0 && newton > low && newton < high;
    const next = inside ? newton : Number.isFinite(high) ? (low + high) / 2 : 2 * density;
    if (Math.abs(next - density) <= relativePrecision * density) return succeed(next);
    density = next;
  }
  return fail({
    code: 'CALC_NOT_CONVERGED',
    message: `the density of ${equation.gas} at ${shown(temperatureK)} K and ${shown(pressurePaAbs)} Pa did not converge; check whether it is a gas there`,
    field: 'pressurePaAbs',
    given: pressurePaAbs,
  });
};
