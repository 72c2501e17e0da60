import { describe, expect, it } from 'vitest';
import {
  elasticModulusAt,
  materialConductivity,
  materialDensity,
  materialHeatCapacity,
  meanExpansionTo,
} from './material-properties.js';

const celsius = (value: number): number => value + 273.15;

describe('elastic modulus of 1.4404, a data sheet with 200, 186, 176 and 165 GPa at 20, 200, 400 and 500 °C', () => {
  it.each([
    // Below the first row its figure, between rows a straight line, past the last row its figure for 50 K.
    [-100, 200e9],
    [20, 200e9],
    [110, 193e9],
    [200, 186e9],
    [300, 181e9],
    [450, 170.5e9],
    [500, 165e9],
    [549, 165e9],
  ])('at %d °C', (temperatureC, expected) => {
    const modulus = elasticModulusAt('316L', celsius(temperatureC));
    expect(modulus.ok && modulus.value.value / expected).toBeCloseTo(1, 12);
    expect(modulus.ok && modulus.value.basis).toBe('published');
  });

  it('ends 50 K past its last row, and says so', () => {
    expect(elasticModulusAt('1.4404', celsius(551))).toMatchObject({
      ok: false,
      error: {
        code: 'CALC_OUT_OF_RANGE',
        field: 'temperatureK',
        allowed: 'up to 823.15 K, where the figures of 1.4404 end',
      },
    });
  });
});

it('a figure at one temperature holds at every one', () => {
  for (const temperatureC of [-50, 20, 400]) {
    const modulus = elasticModulusAt('tantalum', celsius(temperatureC));
    expect(modulus.ok && modulus.value).toMatchObject({ value: 186e9, basis: 'from memory, unverified' });
  }
});

it('expansion is given a kelvin: 120 × 10⁻⁶ of PTFE', () => {
  const expansion = meanExpansionTo('PTFE', celsius(100));
  expect(expansion.ok && expansion.value.value).toBeCloseTo(120e-6, 12);
});

it.each([
  ['density', materialDensity, 7950],
  ['conductivity', materialConductivity, 15],
  ['heat capacity', materialHeatCapacity, 500],
] as const)('%s of 1.4404 is that of the data sheet', (_name, of, expected) => {
  const figure = of('1.4404');
  expect(figure.ok && figure.value.value).toBe(expected);
  expect(figure.ok && figure.value.source).not.toBe('');
});

it.each([
  ['density', materialDensity],
  ['conductivity', materialConductivity],
  ['heatCapacity', materialHeatCapacity],
  ['elasticModulusGPa', (material: string) => elasticModulusAt(material, 300)],
] as const)('names the %s that FKM lacks, and an unknown material', (property, of) => {
  const none = of('FKM');
  expect(none).toMatchObject({ ok: false, error: { code: 'CALC_MISSING_PROPERTY', field: 'material' } });
  expect(!none.ok && none.error.message).toContain(`no ${property} is on file for FKM`);
  expect(of('cheese')).toMatchObject({ ok: false, error: { code: 'CALC_UNKNOWN_MATERIAL' } });
});
