import { describe, expect, it } from 'vitest';
import { evaluate } from '../calculation.js';
import { compressibilityFactor } from './compressibility-factor.js';
import { gasDensity } from './gas-density.js';
import { gasEquations } from './gas-equation-data.js';
import { pengRobinsonUncertainty } from './peng-robinson.js';
import { residualDerivatives } from './residual-helmholtz.js';

describe('the terms of Span and Wagner near the critical point', () => {
  const equations = gasEquations.filter(({ terms }) => terms.some(({ kind }) => kind === 'nonanalytic'));

  /** n Δ^b δ ψ, Δ = θ² + B [(δ − 1)²]^a, θ = 1 − τ + A [(δ − 1)²]^(1/(2β)), ψ = exp(−C (δ − 1)² − D (τ − 1)²). */
  const energy = (terms: (typeof gasEquations)[number]['terms'], tau: number, delta: number): number => {
    let sum = 0;
    for (const group of terms) {
      if (group.kind !== 'nonanalytic') continue;
      group.n.forEach((n, i) => {
        const square = (delta - 1) ** 2;
        const theta = 1 - tau + group.A[i]! * square ** (1 / (2 * group.beta[i]!));
        const distance = theta ** 2 + group.B[i]! * square ** group.a[i]!;
        const psi = Math.exp(-group.C[i]! * square - group.D[i]! * (tau - 1) ** 2);
        sum += n * distance ** group.b[i]! * delta * psi;
      });
    }
    return sum;
  };

  it('are on file for carbon dioxide or water', () => {
    expect(equations.length).toBeGreaterThan(0);
  });

  it.each(
    equations.flatMap((equation) =>
      [0.7, 0.9, 0.97, 1.03, 1.2].map((delta) => [equation.gas, delta, equation] as const),
    ),
  )('%s at δ = %d: δ ∂φ/∂δ is the difference quotient of the energy', (_gas, delta, equation) => {
    for (const reduced of [1.002, 1.01, 1.05]) {
      const temperatureK = reduced * equation.reducingTemperatureK;
      const without = { ...equation, terms: equation.terms.filter(({ kind }) => kind !== 'nonanalytic') };
      const share =
        residualDerivatives(equation, temperatureK)(delta).first -
        residualDerivatives(without, temperatureK)(delta).first;
      const step = 1e-5;
      const at = (value: number) => energy(equation.terms, 1 / reduced, value);
      const slope = (delta * (at(delta + step) - at(delta - step))) / (2 * step);
      expect(Math.abs(share - slope)).toBeLessThan(1e-6 * Math.abs(slope) + 1e-10);
    }
  });
});

it.each(gasEquations.map(({ gas }) => gas))(
  'density of %s is p M / (Z R T), with Z of its own calculation',
  (gas) => {
    const state = { gas, pressurePaAbs: 2e5, temperatureK: 420 };
    const density = evaluate(gasDensity, state);
    const factor = evaluate(compressibilityFactor, state);
    if (!density.ok || !factor.ok) throw new Error(`${gas} has no state`);
    const { molarMassKgPerMol } = gasEquations.find((equation) => equation.gas === gas)!;
    const ideal = (2e5 * molarMassKgPerMol) / (8.314462618 * 420);
    // The equations keep gas constants of their time: 0.01 %.
    expect(density.value.densityKgPerM3 / (ideal / factor.value.compressibilityFactor)).toBeCloseTo(1, 3);
  },
);

it.each([
  [0.5, 0.04],
  [0.51, 0.08],
  [1, 0.08],
  [1.01, 0.25],
])('the band of Peng–Robinson at p/p_c = %d', (reduced, band) => {
  expect(pengRobinsonUncertainty(reduced)).toBe(band);
});
