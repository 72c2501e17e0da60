import { z } from 'zod';
import { type Outcome, succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { fromMemory } from '../source-reference.js';
import { impellerTypes } from '../stirring/impeller-constants.js';
import { heatFields } from './heat-fields.js';
import constantsFile from './vessel-film-constants.json' with { type: 'json' };

const rowSchema = z.strictObject({
  impellers: z.array(z.enum(impellerTypes)).min(1),
  low: z.number().positive(),
  high: z.number().positive(),
  exponent: z.number().positive(),
  minReynolds: z.number().positive(),
  maxReynolds: z.number().positive(),
  source: z.string(),
  basis: z.enum(['published', 'common practice', 'from memory, unverified']),
});

type Row = z.output<typeof rowSchema>;

const rows: readonly Row[] = z
  .strictObject({ about: z.string(), rows: z.array(rowSchema) })
  .parse(constantsFile).rows;

/** Scatter of such correlations about measurements, on either side (common practice). */
const scatter = 0.25;

interface Operation {
  readonly impeller: (typeof impellerTypes)[number];
  readonly reynolds: number;
  readonly speedPerS: number;
}

const rowFor = ({ impeller, reynolds, speedPerS }: Operation): Outcome<Row> => {
  const fitting = rows.filter(({ impellers }) => impellers.includes(impeller));
  const row = fitting.find(
    ({ minReynolds, maxReynolds }) => reynolds >= minReynolds && reynolds <= maxReynolds,
  );
  if (row) return succeed(row);
  const min = Math.min(...fitting.map(({ minReynolds }) => minReynolds));
  const max = Math.max(...fitting.map(({ maxReynolds }) => maxReynolds));
  return outOfRange({
    field: 'speedPerS',
    given: speedPerS,
    unit: '1/s',
    allowed: `${shown((speedPerS * min) / reynolds)} to ${shown((speedPerS * max) / reynolds)} 1/s, where Re is ${shown(min)} to ${shown(max)} (${impeller}); else give a measured coefficient`,
  });
};

/**
 * Film coefficient at the wall of a stirred vessel, as a band.
 *
 *   h D_v/k = a Re^m Pr^(1/3) (μ/μ_w)^0.14,  Re = ρ N D²/μ,  a from low to high end, 25 % scatter on either side
 *
 * @param impeller            type of impeller
 * @param vesselDiameterM     D_v [m]
 * @param impellerDiameterM   D [m]
 * @param speedPerS           N [1/s]
 * @param densityKgPerM3, viscosityPaS, heatCapacityJPerKgK, conductivityWPerMK of the batch; wallViscosityPaS optional
 * @returns lowerCoefficientWPerM2K, upperCoefficientWPerM2K [W/(m²·K)], reynolds [-]
 * @range Re as the row of the impeller, D ≤ D_v; gas in the liquid lowers the coefficient and is not in it
 * @error CALC_OUT_OF_RANGE outside the range
 * @source handbooks of mixing, constants from memory, unverified
 */
export const vesselFilm = calculation({
  id: 'heat.vesselFilm',
  title: 'Film coefficient at the wall of a stirred vessel, as a band',
  inputs: z.strictObject({
    impeller: z.enum(impellerTypes).meta({ description: 'Type of impeller' }),
    vesselDiameterM: heatFields.positive('m', 'D_v', 'Inner diameter of the vessel'),
    impellerDiameterM: heatFields.positive('m', 'D', 'Diameter of the stirrer'),
    speedPerS: heatFields.positive('1/s', 'N', 'Speed of the stirrer'),
    densityKgPerM3: heatFields.positive('kg/m3', 'ρ', 'Density of the batch'),
    viscosityPaS: heatFields.positive('Pa.s', 'μ', 'Dynamic viscosity of the batch'),
    wallViscosityPaS: heatFields.positive('Pa.s', 'μ_w', 'Dynamic viscosity at the wall').optional(),
    heatCapacityJPerKgK: heatFields.heatCapacityJPerKgK,
    conductivityWPerMK: heatFields.positive('W/(m.K)', 'k', 'Thermal conductivity of the batch'),
  }),
  outputs: z.strictObject({
    lowerCoefficientWPerM2K: quantity({ unit: 'W/(m2.K)', symbol: 'h_min', description: 'Lower end' }),
    upperCoefficientWPerM2K: quantity({ unit: 'W/(m2.K)', symbol: 'h_max', description: 'Upper end' }),
    reynolds: quantity({ unit: '1', symbol: 'Re', description: 'Reynolds number of the stirrer' }),
  }),
  formula: String.raw`\frac{h D_v}{k} = a\,\mathrm{Re}^{m}\,\mathrm{Pr}^{1/3}\left(\frac{\mu}{\mu_w}\right)^{0.14}`,
  range: 'Re as the row of the impeller, liquid without gas, stirrer not larger than the vessel',
  source: [fromMemory('Uhl and Gray; Perry; Handbook of Industrial Mixing')],
  compute: (inputs, log) => {
    const {
      impellerDiameterM: D,
      vesselDiameterM,
      speedPerS,
      viscosityPaS: mu,
      wallViscosityPaS = mu,
    } = inputs;
    if (D > vesselDiameterM) {
      return outOfRange({
        field: 'impellerDiameterM',
        given: D,
        unit: 'm',
        allowed: `up to vesselDiameterM (${shown(vesselDiameterM)} m)`,
      });
    }
    const reynolds = (inputs.densityKgPerM3 * speedPerS * D * D) / mu;
    const row = rowFor({ impeller: inputs.impeller, reynolds, speedPerS });
    if (!row.ok) return row;
    const prandtl = (inputs.heatCapacityJPerKgK * mu) / inputs.conductivityWPerMK;
    const perConstant =
      (reynolds ** row.value.exponent *
        Math.cbrt(prandtl) *
        (mu / wallViscosityPaS) ** 0.14 *
        inputs.conductivityWPerMK) /
      vesselDiameterM;
    const lowerCoefficientWPerM2K = row.value.low * (1 - scatter) * perConstant;
    const upperCoefficientWPerM2K = row.value.high * (1 + scatter) * perConstant;
    log?.({
      symbol: 'Re',
      formula: 'ρ N D²/μ',
      substituted: `${shown(inputs.densityKgPerM3)} × ${shown(speedPerS)} × ${shown(D)}² / ${shown(mu)}`,
      value: reynolds,
      unit: '1',
    });
    log?.({
      symbol: 'h_min',
      formula: 'a (1 − 0.25) Re^m Pr^(1/3) (μ/μ_w)^0.14 k/D_v',
      substituted: `${shown(row.value.low)} × 0.75 × ${shown(reynolds)}^${shown(row.value.exponent)} × ${shown(prandtl)}^(1/3) × (${shown(mu)}/${shown(wallViscosityPaS)})^0.14 × ${shown(inputs.conductivityWPerMK)}/${shown(vesselDiameterM)}`,
      value: lowerCoefficientWPerM2K,
      unit: 'W/(m2.K)',
      note: `${row.value.source} (${row.value.basis}); upper end with a = ${shown(row.value.high)} and + 25 %: ${shown(upperCoefficientWPerM2K)}`,
    });
    return succeed({ lowerCoefficientWPerM2K, upperCoefficientWPerM2K, reynolds });
  },
});
