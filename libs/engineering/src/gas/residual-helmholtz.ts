import type { GasEquation, ResidualTerms } from './gas-equation-data.js';

/** What pressure needs of the residual Helmholtz energy at one density. */
export interface ResidualDerivatives {
  /** δ ∂αr/∂δ; Z = 1 + this */
  readonly first: number;
  /** δ² ∂²αr/∂δ² (the non-analytic terms left out: it only steers the iteration) */
  readonly second: number;
}

type Contribution = (delta: number) => ResidualDerivatives;

const at = (values: readonly number[], index: number): number => values[index] ?? 0;

const powerTerms = (terms: Extract<ResidualTerms, { kind: 'power' }>, tau: number): Contribution => {
  const scaled = terms.n.map((n, i) => n * tau ** at(terms.t, i));
  return (delta) => {
    let first = 0;
    let second = 0;
    for (let i = 0; i < scaled.length; i += 1) {
      const d = at(terms.d, i);
      const l = at(terms.l, i);
      const power = l === 0 ? 0 : delta ** l;
      const value = at(scaled, i) * delta ** d * (l === 0 ? 1 : Math.exp(-power));
      const slope = d - l * power;
      first += value * slope;
      second += value * (slope * (slope - 1) - l * l * power);
    }
    return { first, second };
  };
};

/** Gaussian terms, and those of the form exp(η (δ − ε)² + 1/(β (τ − γ)² + b)) in the equation of ammonia. */
const bellTerms = (
  terms: Extract<ResidualTerms, { kind: 'gaussian' | 'gaob' }>,
  tau: number,
): Contribution => {
  const sign = terms.kind === 'gaussian' ? -1 : 1;
  const scaled = terms.n.map((n, i) => {
    const square = at(terms.beta, i) * (tau - at(terms.gamma, i)) ** 2;
    const exponent = terms.kind === 'gaussian' ? -square : 1 / (square + at(terms.b, i));
    return n * tau ** at(terms.t, i) * Math.exp(exponent);
  });
  return (delta) => {
    let first = 0;
    let second = 0;
    for (let i = 0; i < scaled.length; i += 1) {
      const d = at(terms.d, i);
      const eta = sign * at(terms.eta, i);
      const offset = delta - at(terms.epsilon, i);
      const value = at(scaled, i) * delta ** d * Math.exp(eta * offset ** 2);
      const slope = d + 2 * eta * offset * delta;
      first += value * slope;
      second += value * (slope * slope - d + 2 * eta * delta * delta);
    }
    return { first, second };
  };
};

/** Near-critical terms of Span and Wagner, n Δ^b δ ψ; they vanish away from the critical point. */
const nonAnalyticTerms = (
  terms: Extract<ResidualTerms, { kind: 'nonanalytic' }>,
  tau: number,
): Contribution => {
  return (delta) => {
    const square = (delta - 1) ** 2;
    let first = 0;
    for (let i = 0; i < terms.n.length; i += 1) {
      const [a, b, beta] = [at(terms.a, i), at(terms.b, i), at(terms.beta, i)];
      const [A, B, C, D] = [at(terms.A, i), at(terms.B, i), at(terms.C, i), at(terms.D, i)];
      const theta = 1 - tau + A * square ** (1 / (2 * beta));
      const distance = theta ** 2 + B * square ** a;
      if (distance === 0) continue;
      const psi = Math.exp(-C * square - D * (tau - 1) ** 2);
      const distanceSlope =
        square === 0
          ? 0
          : (delta - 1) *
            (((2 * A * theta) / beta) * square ** (1 / (2 * beta) - 1) + 2 * B * a * square ** (a - 1));
      const psiSlope = -2 * C * (delta - 1) * psi;
      first +=
        at(terms.n, i) *
        delta *
        (distance ** b * (psi + delta * psiSlope) + b * distance ** (b - 1) * distanceSlope * delta * psi);
    }
    return { first, second: 0 };
  };
};

const contribution = (terms: ResidualTerms, tau: number): Contribution => {
  switch (terms.kind) {
    case 'power':
      return powerTerms(terms, tau);
    case 'gaussian':
    case 'gaob':
      return bellTerms(terms, tau);
    case 'nonanalytic':
      return nonAnalyticTerms(terms, tau);
  }
};

/**
 * Density derivatives of the residual Helmholtz energy at a temperature, as a function of δ = ρ/ρ_r.
 * The temperature parts are computed once.
 */
export const residualDerivatives = (equation: GasEquation, temperatureK: number): Contribution => {
  const tau = equation.reducingTemperatureK / temperatureK;
  const parts = equation.terms.map((terms) => contribution(terms, tau));
  return (delta) => {
    let first = 0;
    let second = 0;
    for (const part of parts) {
      const derivatives = part(delta);
      first += derivatives.first;
      second += derivatives.second;
    }
    return { first, second };
  };
};
