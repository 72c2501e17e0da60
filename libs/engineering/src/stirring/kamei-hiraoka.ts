import type { StepLog } from '../calculation.js';
import { formulaStep } from '../formula-step.js';

/**
 * Power number of paddles and turbines with straight blades over the whole range of Reynolds numbers
 * (Kamei, Hiraoka and others). Lengths by the vessel diameter; θ blade angle to the plane of rotation.
 *
 * Unbaffled, all Re: Np0 = 1.2 π⁴ β² / (8 d³/(T² H)) · f(Re_G), see `unbaffledCurve`.
 * Baffled, turbulent: Np = (1 + x⁻³)^(−1/3) Np_max, x = 4.5 (B_w/T) n_B^0.8 / ((2θ/π)^0.72 Np_max^0.2) + Np0/Np_max.
 * Baffles have no effect in laminar flow; between the two ends the curves are blended by 1/(1 + 500/Re), which is our
 * own choice and keeps within 10 % of the published values of a six-blade turbine at Re 100 to 10 000.
 *
 * @source furukawa-2012 (existence and abstract read; equations from memory, checked against Nagata and published
 *   power numbers); kamei-hiraoka-1997 (the law 8.3 n^0.7 b/d)
 */
export interface BladedImpeller {
  readonly bladeCount: number;
  readonly bladeWidthOverDiameter: number;
  readonly bladeAngleDeg: number;
  readonly impellerOverVessel: number;
  readonly liquidHeightOverVessel: number;
  readonly baffleCount: number;
  readonly baffleWidthOverVessel: number;
}

/** Reynolds number at which the baffles have half of their effect. */
const baffleOnset = 500;

/** n^0.7 b/d of the blades. */
const bladeLoad = (impeller: Pick<BladedImpeller, 'bladeCount' | 'bladeWidthOverDiameter'>): number =>
  impeller.bladeCount ** 0.7 * impeller.bladeWidthOverDiameter;

/** Highest power number, fully baffled and turbulent. */
const maxPowerNumberOf = ({ bladeAngleDeg, ...impeller }: BladedImpeller): number => {
  const width = bladeLoad(impeller);
  const flat = width <= 0.54 ? 10 * width ** 1.3 : width <= 1.6 ? 8.3 * width : 10 * width ** 0.6;
  return flat * (bladeAngleDeg / 90) ** 0.9 * Math.sin((bladeAngleDeg * Math.PI) / 180) ** 1.6;
};

/** Both terms of −7.8: a smooth minimum. */
const smoothMinimum = (first: number, second: number): number =>
  (first ** -7.8 + second ** -7.8) ** (-1 / 7.8);

export interface BladedCurve {
  /** Np at a Reynolds number. */
  readonly at: (reynolds: number) => number;
  /** Np · Re in laminar flow. */
  readonly laminarConstant: number;
  /** How Np comes about at a Reynolds number. */
  readonly explain: (reynolds: number, log: StepLog) => void;
}

/** What does not depend on Re, by the symbols of the evidence. */
const unbaffledTerms = (impeller: BladedImpeller) => {
  const { bladeCount: n, impellerOverVessel: d, liquidHeightOverVessel: h } = impeller;
  const s = Math.sin((impeller.bladeAngleDeg * Math.PI) / 180);
  const b = impeller.bladeWidthOverDiameter * d;
  const L = Math.log(1 / d);
  const β = (2 * L) / (1 / d - d);
  const η = (0.711 * (0.157 + (n * L) ** 0.611)) / (n ** 0.52 * (1 - d ** 2));
  const γ = ((η * L) / (β / d) ** 5) ** (1 / 3);
  const X = (γ * n ** 0.7 * b * s ** 1.6) / h;
  const C_t = smoothMinimum(1.96 * X ** 1.19, 0.25);
  const m = smoothMinimum(0.71 * X ** 0.373, 0.333);
  const C_tr = 23.8 * d ** -3.24 * (b * s) ** -1.18 * X ** -0.74;
  const f_r = 0.0151 * d * C_t ** 0.308;
  const C_L = 0.215 * η * n * (d / h) * (1 - d ** 2) + 1.83 * ((b * s) / h) * (n / (2 * s)) ** (1 / 3);
  const R = (Math.PI * η * L) / ((4 * d) / β);
  const F = (1.2 * Math.PI ** 4 * β ** 2) / ((8 * d ** 3) / h);
  return { n, d, h, s, b, L, β, η, γ, X, C_t, m, C_tr, f_r, C_L, R, F };
};

/** Name, formula and remark of each term, in the order in which they follow from one another. */
const unbaffledFormulas = [
  ['L', 'ln(1 / d)', 'lengths by the vessel diameter: d impeller, b blade width, h liquid'],
  ['β', '2 · L / (1 / d − d)'],
  ['η', '0.711 · (0.157 + (n · L) ^ 0.611) / (n ^ 0.52 · (1 − d²))'],
  ['γ', '(η · L / (β / d)⁵) ^ (1 / 3)'],
  ['X', 'γ · n ^ 0.7 · b · s ^ 1.6 / h', 's sine of the blade angle'],
  ['C_t', '((1.96 · X ^ 1.19) ^ (−7.8) + 0.25 ^ (−7.8)) ^ (−1 / 7.8)'],
  ['m', '((0.71 · X ^ 0.373) ^ (−7.8) + 0.333 ^ (−7.8)) ^ (−1 / 7.8)'],
  ['C_tr', '23.8 · d ^ (−3.24) · (b · s) ^ (−1.18) · X ^ (−0.74)'],
  ['f_r', '0.0151 · d · C_t ^ 0.308'],
  ['C_L', '0.215 · η · n · d / h · (1 − d²) + 1.83 · b · s / h · (n / (2 · s)) ^ (1 / 3)'],
  ['R', 'π · η · L · β / (4 · d)'],
  ['F', '1.2 · π⁴ · β² · h / (8 · d³)'],
] as const;

/** Np0 over Re without baffles. */
const unbaffledCurve = (impeller: BladedImpeller): BladedCurve => {
  const terms = unbaffledTerms(impeller);
  const { C_t, m, C_tr, f_r, C_L, R, F } = terms;
  const rough = (f_r / C_t) ** (1 / m);
  const friction = (re: number): number => C_L / re + C_t * (1 / (C_tr / re + re) + rough) ** m;
  const at = (reynolds: number): number => F * friction(R * reynolds);
  return {
    at,
    laminarConstant: (F * C_L) / R,
    explain: (reynolds, log) => {
      for (const [symbol, formula, note] of unbaffledFormulas) {
        log(formulaStep({ symbol, formula, where: terms, value: terms[symbol], unit: '1', note }));
      }
      const Re_G = R * reynolds;
      log(
        formulaStep({
          symbol: 'Re_G',
          formula: 'R · Re',
          where: { R, Re: reynolds },
          value: Re_G,
          unit: '1',
        }),
      );
      const f = friction(Re_G);
      log(
        formulaStep({
          symbol: 'f',
          formula: 'C_L / Re_G + C_t · (1 / (C_tr / Re_G + Re_G) + (f_r / C_t) ^ (1 / m)) ^ m',
          where: { C_L, C_t, C_tr, f_r, m, Re_G },
          value: f,
          unit: '1',
        }),
      );
      log(
        formulaStep({
          symbol: 'Np_0',
          formula: 'F · f',
          where: { F, f },
          value: F * f,
          unit: '1',
          note: 'without baffles, Kamei–Hiraoka; from memory, unverified',
        }),
      );
    },
  };
};

/** Highest power number as the law of its range. */
const maxFormula = (width: number): string =>
  width <= 0.54 ? '10 · w ^ 1.3' : width <= 1.6 ? '8.3 · w' : '10 · w ^ 0.6';

/** Np over Re. */
export const bladedPowerCurve = (impeller: BladedImpeller): BladedCurve => {
  const unbaffled = unbaffledCurve(impeller);
  const { baffleCount, baffleWidthOverVessel } = impeller;
  if (baffleCount === 0 || baffleWidthOverVessel === 0) return unbaffled;
  const max = maxPowerNumberOf(impeller);
  const baffles =
    (4.5 * baffleWidthOverVessel * baffleCount ** 0.8) / ((impeller.bladeAngleDeg / 90) ** 0.72 * max ** 0.2);
  const turbulentOf = (without: number): number => {
    const x = baffles + without / max;
    return max / Math.cbrt(1 + 1 / (x * x * x));
  };
  const blended = (without: number, reynolds: number): number => {
    const share = 1 / (1 + baffleOnset / reynolds);
    // Baffles never lower the power: below the laminar crossing the unbaffled curve stands.
    return without + share * Math.max(0, turbulentOf(without) - without);
  };
  return {
    at: (reynolds) => blended(unbaffled.at(reynolds), reynolds),
    laminarConstant: unbaffled.laminarConstant,
    explain: (reynolds, log) => {
      unbaffled.explain(reynolds, log);
      const { bladeAngleDeg: θ, bladeCount: n, bladeWidthOverDiameter } = impeller;
      const [w, Np_0] = [bladeLoad(impeller), unbaffled.at(reynolds)];
      const steps = [
        ['w', 'n ^ 0.7 · b_d', w, 'b_d blade width by impeller diameter'],
        ['Np_max', `${maxFormula(w)} · (θ / 90) ^ 0.9 · sin(θ · π / 180) ^ 1.6`, max, 'fully baffled'],
        ['x', '4.5 · B · n_B ^ 0.8 / ((θ / 90) ^ 0.72 · Np_max ^ 0.2) + Np_0 / Np_max', baffles + Np_0 / max],
        ['Np_b', 'Np_max / (1 + x ^ (−3)) ^ (1 / 3)', turbulentOf(Np_0), 'turbulent, with these baffles'],
        ['Np', 'Np_0 + max(0; Np_b − Np_0) / (1 + 500 / Re)', blended(Np_0, reynolds)],
      ] as const;
      const where: Record<string, number> = { θ, n, b_d: bladeWidthOverDiameter, Np_0, Re: reynolds };
      Object.assign(where, { B: baffleWidthOverVessel, n_B: baffleCount });
      for (const [symbol, formula, value, note] of steps) {
        log(formulaStep({ symbol, formula, where, value, unit: '1', note }));
        where[symbol] = value;
      }
    },
  };
};
