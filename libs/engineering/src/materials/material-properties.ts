import { type Basis, fail, type Outcome, succeed } from '@flangewise/model';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { materialGrade, type MaterialGrade } from './material-grade.js';

/** A figure with where it comes from. */
export interface MaterialFigure {
  readonly value: number;
  readonly basis: Basis;
  readonly source: string;
}

type Constant = 'density' | 'conductivity' | 'heatCapacity';
type Curve = 'elasticModulusGPa' | 'expansionPerMK';

const missing = (material: string, property: string): Outcome<never> =>
  fail({
    code: 'CALC_MISSING_PROPERTY',
    message: `material: no ${property} is on file for ${material}; enter a figure with its source`,
    field: 'material',
    given: material,
  });

const constant = (material: string, property: Constant): Outcome<MaterialFigure> => {
  const grade = materialGrade(material);
  if (!grade.ok) return grade;
  const figure = grade.value[property];
  return figure === undefined ? missing(material, property) : succeed(figure);
};

const interpolate = (curve: NonNullable<MaterialGrade[Curve]>, temperatureC: number): number | undefined => {
  const { temperaturesC, values } = curve;
  const first = temperaturesC[0];
  const last = temperaturesC[temperaturesC.length - 1];
  if (first === undefined || last === undefined) return undefined;
  if (temperatureC <= first || temperaturesC.length === 1) return values[0];
  // The curves are nearly straight: their last figure is carried on for at most 50 K.
  if (temperatureC > last + 50) return undefined;
  if (temperatureC >= last) return values[values.length - 1];
  const upper = temperaturesC.findIndex((temperature) => temperature > temperatureC);
  const [t0, t1, v0, v1] = [temperaturesC[upper - 1], temperaturesC[upper], values[upper - 1], values[upper]];
  if (t0 === undefined || t1 === undefined || v0 === undefined || v1 === undefined) return undefined;
  return v0 + ((v1 - v0) * (temperatureC - t0)) / (t1 - t0);
};

interface CurveQuery {
  readonly property: Curve;
  readonly factor: number;
}

const atTemperature = (
  material: string,
  temperatureK: number,
  { property, factor }: CurveQuery,
): Outcome<MaterialFigure> => {
  const grade = materialGrade(material);
  if (!grade.ok) return grade;
  const curve = grade.value[property];
  if (curve === undefined) return missing(material, property);
  const value = interpolate(curve, temperatureK - 273.15);
  if (value === undefined) {
    const last = curve.temperaturesC[curve.temperaturesC.length - 1] ?? 20;
    return outOfRange({
      field: 'temperatureK',
      given: temperatureK,
      unit: 'K',
      allowed: `up to ${shown(last + 323.15)} K, where the figures of ${grade.value.key} end`,
    });
  }
  return succeed({ value: value * factor, basis: curve.basis, source: curve.source });
};

/** Density [kg/m³]. @error CALC_UNKNOWN_MATERIAL, CALC_MISSING_PROPERTY */
export const materialDensity = (material: string): Outcome<MaterialFigure> => constant(material, 'density');

/** Thermal conductivity near 20 °C [W/(m·K)]. @error CALC_UNKNOWN_MATERIAL, CALC_MISSING_PROPERTY */
export const materialConductivity = (material: string): Outcome<MaterialFigure> =>
  constant(material, 'conductivity');

/** Specific heat capacity near 20 °C [J/(kg·K)]. @error CALC_UNKNOWN_MATERIAL, CALC_MISSING_PROPERTY */
export const materialHeatCapacity = (material: string): Outcome<MaterialFigure> =>
  constant(material, 'heatCapacity');

/** Elastic modulus at a temperature [Pa]. @error CALC_UNKNOWN_MATERIAL, CALC_MISSING_PROPERTY, CALC_OUT_OF_RANGE */
export const elasticModulusAt = (material: string, temperatureK: number): Outcome<MaterialFigure> =>
  atTemperature(material, temperatureK, { property: 'elasticModulusGPa', factor: 1e9 });

/** Mean linear expansion from 20 °C to a temperature [1/K]. @error as elasticModulusAt */
export const meanExpansionTo = (material: string, temperatureK: number): Outcome<MaterialFigure> =>
  atTemperature(material, temperatureK, { property: 'expansionPerMK', factor: 1e-6 });
