import { z } from 'zod';
import { shown } from '../shown.js';

const number = z.number();
const range = {
  minTemperatureK: number.min(0),
  maxTemperatureK: number.positive(),
  source: z.string(),
  basis: z.enum(['published', 'common practice', 'from memory, unverified']),
};

/**
 * A property as a function of temperature in a form that handbooks print, with range, source and basis.
 * Which unit the value has depends on the property (see fluid-property.ts).
 */
export const correlationSchema = z.discriminatedUnion('model', [
  z.strictObject({ model: z.literal('antoine10'), a: number, b: number, c: number, ...range }),
  z.strictObject({ model: z.literal('antoine'), a: number, b: number, c: number, ...range }),
  z.strictObject({
    model: z.enum(['wagner255', 'wagner36']),
    a: number,
    b: number,
    c: number,
    d: number,
    criticalTemperatureK: number,
    criticalPressurePa: number,
    ...range,
  }),
  z.strictObject({
    model: z.literal('dippr101'),
    c1: number,
    c2: number,
    c3: number,
    c4: number,
    c5: number,
    ...range,
  }),
  z.strictObject({ model: z.literal('dippr105'), c1: number, c2: number, c3: number, c4: number, ...range }),
  z.strictObject({
    model: z.literal('vdi'),
    criticalDensityKgPerM3: number,
    a: number,
    b: number,
    c: number,
    d: number,
    criticalTemperatureK: number,
    ...range,
  }),
  z.strictObject({
    model: z.literal('rackett'),
    referenceDensityKgPerM3: number,
    referenceTemperatureK: number,
    criticalTemperatureK: number,
    rackettParameter: number,
    ...range,
  }),
  z.strictObject({
    model: z.literal('dippr100'),
    a: number,
    b: number,
    c: number,
    d: number,
    e: number,
    ...range,
  }),
  z.strictObject({
    model: z.literal('dippr114'),
    c1: number,
    c2: number,
    c3: number,
    c4: number,
    criticalTemperatureK: number,
    ...range,
  }),
  z.strictObject({ model: z.literal('polynomial'), coefficients: z.array(number).min(1), ...range }),
  z.strictObject({ model: z.literal('constant'), value: number, ...range }),
]);

export type Correlation = z.output<typeof correlationSchema>;

/** c₀ + c₁ x + c₂ x² + … */
export const polynomial = (coefficients: readonly number[], x: number): number =>
  coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0);

/**
 * The value of a correlation at a temperature. The caller checks the range.
 *
 * @param temperatureK T, within the range of the correlation [K]
 * @returns the property in the unit of the printed form
 */
export const correlationValue = (correlation: Correlation, temperatureK: number): number => {
  const T = temperatureK;
  switch (correlation.model) {
    case 'antoine10':
      return 10 ** (correlation.a - correlation.b / (T + correlation.c));
    case 'antoine':
      return Math.exp(correlation.a - correlation.b / (T + correlation.c));
    case 'wagner255':
    case 'wagner36': {
      const { a, b, c, d, criticalTemperatureK: Tc, criticalPressurePa: pc } = correlation;
      const t = Math.max(0, 1 - T / Tc);
      const [third, fourth] = correlation.model === 'wagner255' ? [2.5, 5] : [3, 6];
      return pc * Math.exp(((a * t + b * t ** 1.5 + c * t ** third + d * t ** fourth) * Tc) / T);
    }
    case 'dippr101': {
      const { c1, c2, c3, c4, c5 } = correlation;
      return Math.exp(c1 + c2 / T + c3 * Math.log(T) + (c4 === 0 ? 0 : c4 * T ** c5));
    }
    case 'dippr105': {
      const { c1, c2, c3, c4 } = correlation;
      return c1 / c2 ** (1 + Math.max(0, 1 - T / c3) ** c4);
    }
    case 'vdi': {
      const { criticalDensityKgPerM3, a, b, c, d, criticalTemperatureK: Tc } = correlation;
      const t = Math.max(0, 1 - T / Tc);
      return criticalDensityKgPerM3 + a * t ** 0.35 + b * t ** (2 / 3) + c * t + d * t ** (4 / 3);
    }
    case 'rackett': {
      const { referenceDensityKgPerM3, referenceTemperatureK, criticalTemperatureK: Tc } = correlation;
      const exponent = (1 - referenceTemperatureK / Tc) ** (2 / 7) - (1 - T / Tc) ** (2 / 7);
      return referenceDensityKgPerM3 * correlation.rackettParameter ** exponent;
    }
    case 'dippr100': {
      const { a, b, c, d, e } = correlation;
      return polynomial([a, b, c, d, e], T);
    }
    case 'dippr114': {
      const { c1, c2, c3, c4, criticalTemperatureK } = correlation;
      const t = 1 - T / criticalTemperatureK;
      return (
        (c1 * c1) / t +
        c2 -
        2 * c1 * c3 * t -
        c1 * c4 * t ** 2 -
        (c3 * c3 * t ** 3) / 3 -
        (c3 * c4 * t ** 4) / 2 -
        (c4 * c4 * t ** 5) / 5
      );
    }
    case 'polynomial':
      return polynomial(correlation.coefficients, T);
    case 'constant':
      return correlation.value;
  }
};

const formulas: Readonly<Record<Correlation['model'], string>> = {
  antoine10: '10^(A − B/(T + C))',
  antoine: 'exp(A − B/(T + C))',
  wagner255: 'p_c exp((A t + B t^1.5 + C t^2.5 + D t^5) T_c/T), t = 1 − T/T_c',
  wagner36: 'p_c exp((A t + B t^1.5 + C t^3 + D t^6) T_c/T), t = 1 − T/T_c',
  dippr101: 'exp(C1 + C2/T + C3 ln T + C4 T^C5)',
  dippr105: 'C1 / C2^(1 + (1 − T/C3)^C4)',
  vdi: 'ρ_c + A t^0.35 + B t^(2/3) + C t + D t^(4/3), t = 1 − T/T_c',
  rackett: 'ρ_ref Z^((1 − T_ref/T_c)^(2/7) − (1 − T/T_c)^(2/7))',
  dippr100: 'A + B T + C T² + D T³ + E T⁴',
  dippr114: 'C1²/t + C2 − 2 C1 C3 t − C1 C4 t² − C3² t³/3 − C3 C4 t⁴/2 − C4² t⁵/5, t = 1 − T/T_c',
  polynomial: 'c0 + c1 T + c2 T² + …',
  constant: 'one value',
};

/** The printed form of a correlation, and the constants that stand in it. */
export const describeCorrelation = (
  correlation: Correlation,
  temperatureK: number,
): { readonly formula: string; readonly substituted: string } => {
  const constants = Object.entries(correlation).flatMap(([key, value]) => {
    if (key === 'minTemperatureK' || key === 'maxTemperatureK') return [];
    if (typeof value === 'number') return [`${key} = ${String(value)}`];
    return Array.isArray(value) ? [`${key} = ${value.map(String).join(', ')}`] : [];
  });
  return {
    formula: formulas[correlation.model],
    substituted: `T = ${shown(temperatureK)} K, ${constants.join(', ')}`,
  };
};
