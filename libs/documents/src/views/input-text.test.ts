import { describe, expect, it } from 'vitest';
import { type InputField, inputsText } from './input-text.js';

const field = (field: string, unit?: string, symbol?: string, description?: string): InputField => ({
  field,
  unit,
  symbol,
  description,
});

const shown = (inputs: Readonly<Record<string, unknown>>, ...declared: readonly InputField[]): string =>
  inputsText(inputs, declared).replace(/[\u2009\u2060]+/g, ' ');

describe('inputs of a calculation in words', () => {
  it('name what they are, with symbol and unit', () => {
    expect(
      shown({ tipMassKg: 2.1 }, field('tipMassKg', 'kg', 'm_t', 'Mass at the end of the shaft; with liquid')),
    ).toBe('Mass at the end of the shaft, m_t = 2.1 kg');
  });

  it('set the thousands of large numbers apart and keep the digits to redo the calculation', () => {
    expect(shown({ stressPa: 104_666_700 }, field('stressPa', 'Pa', 'f', 'Design stress'))).toBe(
      'Design stress, f = 104 666 700 Pa',
    );
    expect(shown({ x: 0.00001234567 }, field('x', 'm', 'x', 'Gap'))).toBe('Gap, x = 1.23457 · 10^−5 m');
  });

  it('tell gauge from absolute', () => {
    const pressure = field('inletPressurePaAbs', 'Pa', 'p_1', 'Pressure before the valve');
    expect(shown({ inletPressurePaAbs: 600_000 }, pressure)).toBe(
      'Pressure before the valve, p_1 = 600 000 Pa(a)',
    );
    expect(shown({ setPressurePaGauge: 5e5 }, field('setPressurePaGauge', 'Pa', 'p_s', 'Set pressure'))).toBe(
      'Set pressure, p_s = 500 000 Pa(g)',
    );
  });

  it('reach into lists of objects, and fall back on the words of the name', () => {
    expect(
      shown(
        { media: [{ amountMol: 2, substance: 'water' }], isCooled: true, temperatureK: 523.15 },
        field('media[].amountMol', 'mol', 'n', 'Amount'),
      ),
    ).toBe('media = Amount, n = 2 mol, substance = water; is cooled = yes; temperature [K] = 523.15');
  });
});
