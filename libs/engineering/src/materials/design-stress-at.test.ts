import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../calculation.js';
import { allowableStress } from './allowable-stress.js';
import { designStress } from './design-stress.js';
import { designStressAt } from './design-stress-at.js';
import { materialGrades } from './material-grade.js';
import { elasticModulusAt, materialDensity } from './material-properties.js';
import { minimumProofStrength } from './proof-strength.js';

const celsius = (value: number): number => value + 273.15;

const stressMPa = (material: string, temperatureC: number): number => {
  const stress = designStressAt(material, celsius(temperatureC));
  if (!stress.ok) throw new Error(stress.error.message);
  return stress.value.stressPa / 1e6;
};

const rated = [
  '1.4404',
  '1.4571',
  '1.4435',
  '2.4819',
  '2.4602',
  '2.4816',
  '2.4856',
  'Ti Gr 2',
  'Zr 702',
  'P265GH',
] as const;

describe('design stress of the materials of the range', () => {
  it.each(rated)('%s has one from 20 to 300 °C that never rises with temperature', (material) => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 300, noNaN: true }),
        fc.double({ min: 0, max: 100, noNaN: true }),
        (t, step) => {
          const warmer = Math.min(300, t + step);
          expect(stressMPa(material, warmer)).toBeLessThanOrEqual(stressMPa(material, t) + 1e-9);
          expect(stressMPa(material, warmer)).toBeGreaterThan(20);
        },
      ),
    );
  });

  it('rests on Rp1.0 for 1.4404', () => {
    // Rp1.0 199 MPa at 100 °C and 167 MPa at 200 °C: steel maker's data sheet S31603 (values as in EN 10028-7).
    expect(stressMPa('316L', 100)).toBeCloseTo(199 / 1.5, 6);
    expect(stressMPa('316L', 200)).toBeCloseTo(111.33, 2);
  });

  it('says what rests on memory', () => {
    const basis = (material: string, temperatureC: number): string => {
      const stress = designStressAt(material, celsius(temperatureC));
      return stress.ok ? stress.value.basis : stress.error.code;
    };
    expect(basis('1.4404', 200)).toBe('published');
    expect(basis('1.4404', 175)).toBe('from memory, unverified');
    expect(basis('1.4571', 200)).toBe('from memory, unverified');
    expect(basis('C-276', 200)).toBe('from memory, unverified');
    expect(basis('C-22', 200)).toBe('published');
    expect(basis('Ti Gr 2', 200)).toBe('published');
    expect(basis('Zr 702', 200)).toBe('published');
    expect(basis('P265GH', 200)).toBe('published');
  });

  it('takes titanium and zirconium from ASME II-D, straight between the rows', () => {
    // ASME II-D table 1B for SB-523 zirconium 702, read on a pipe supplier's page: 392 °F and 662 °F between rows.
    expect(stressMPa('Zr 702', 200)).toBeCloseTo(63.85, 1);
    expect(stressMPa('Zr 702', 350)).toBeCloseTo(37.95, 1);
    // SB-265 grade 2 at 300 °F: 10.3 ksi, supplier's page quoting ASME II-D.
    expect(stressMPa('3.7035', 148.889)).toBeCloseTo(71.02, 1);
  });

  it('takes the lower of proof and tensile strength for ferritic steel', () => {
    // EN 13445 training example: P235GH at 200 °C, Rp0.2 182 MPa, Rm 360 MPa, f = 121.33 MPa.
    expect(stressMPa('P235GH', 200)).toBeCloseTo(121.33, 2);
    expect(stressMPa('P265GH', 20)).toBeCloseTo(410 / 2.4, 6);
  });

  it.each(['tantalum', 'PTFE', 'borosilicate glass 3.3', 'Ti Gr 7', 'FKM', 'nickel alloy', '1.4401'])(
    'gives %s no rating of its own',
    (material) => {
      const stress = designStressAt(material, celsius(100));
      expect(stress.ok ? 'rated' : stress.error.code).toBe('CALC_MISSING_PROPERTY');
    },
  );

  it('ends where the tables end, and where toughness must be shown', () => {
    const code = (material: string, temperatureC: number): string => {
      const stress = designStressAt(material, celsius(temperatureC));
      return stress.ok ? 'ok' : stress.error.code;
    };
    expect(code('1.4404', 400)).toBe('ok');
    expect(code('1.4404', 400.2)).toBe('CALC_OUT_OF_RANGE');
    expect(code('1.4404', -196)).toBe('ok');
    expect(code('1.4404', -197)).toBe('CALC_OUT_OF_RANGE');
    expect(code('P265GH', -10)).toBe('ok');
    expect(code('P265GH', -11)).toBe('CALC_OUT_OF_RANGE');
    expect(code('Ti Gr 2', 315.5)).toBe('ok');
    expect(code('Ti Gr 2', 316)).toBe('CALC_OUT_OF_RANGE');
    expect(code('unobtainium', 20)).toBe('CALC_UNKNOWN_MATERIAL');
  });

  it('answers odd input with a code and never throws', () => {
    fc.assert(
      fc.property(fc.string(), fc.double(), (material, temperatureK) => {
        const stress = designStressAt(material, temperatureK);
        if (stress.ok) expect(Number.isFinite(stress.value.stressPa)).toBe(true);
        else expect(stress.error.code).toMatch(/^CALC_/);
      }),
    );
  });
});

describe('strength tables', () => {
  it('interpolate proof strengths', () => {
    // Linear interpolation between rows of EN 10028-7: 1.4404 at 120, 225 and 325 °C.
    for (const [temperatureC, expected] of [
      [120, 160.4],
      [225, 132],
      [325, 115.5],
    ] as const) {
      const proof = minimumProofStrength({
        material: '1.4404',
        proof: 'Rp0.2',
        temperatureK: celsius(temperatureC),
      });
      expect(proof.ok && proof.value.stressPa / 1e6).toBeCloseTo(expected, 6);
    }
  });

  it('never return a typical strength', () => {
    const hot = minimumProofStrength({ material: 'Ti Gr 2', proof: 'Rp0.2', temperatureK: celsius(204) });
    expect(hot.ok).toBe(false);
    const glass = minimumProofStrength({ material: 'Ta', proof: 'Rp1.0', temperatureK: 293.15 });
    expect(!glass.ok && glass.error.code).toBe('CALC_MISSING_PROPERTY');
  });

  it('ask for the product where a material has several tables', () => {
    const stress = evaluate(allowableStress, { code: 'ASME VIII-1', material: '316L', temperatureK: 366.15 });
    expect(!stress.ok && stress.error.code).toBe('CALC_MISSING_PROPERTY');
    expect(!stress.ok && stress.error.allowed).toContain('dual certified');
  });

  it('take the lower column of two where nothing is said', () => {
    const lower = evaluate(allowableStress, {
      code: 'ASME Code Case 2226-1',
      material: 'C-22',
      temperatureK: 477.594,
    });
    expect(lower.ok && lower.value.stressPa).toBeCloseTo(157.9e6, -5);
  });

  it('know the code EN 13445-3 as the nominal design stress', () => {
    const stress = evaluate(allowableStress, {
      code: 'EN 13445-3',
      material: '316L',
      temperatureK: celsius(200),
    });
    expect(stress.ok && stress.value.stressPa / 1e6).toBeCloseTo(111.33, 2);
    const other = evaluate(allowableStress, {
      code: 'AD 2000',
      material: '316L',
      temperatureK: celsius(200),
    });
    expect(!other.ok && other.error.code).toBe('CALC_MISSING_PROPERTY');
  });
});

describe('nominal design stress by EN 13445-3', () => {
  const base = { code: 'EN 13445-3', steel: 'austenitic' } as const;

  it('uses the tensile strength from 35 % elongation on', () => {
    // 1.4404 at 200 °C: Rp1.0 167, Rm 390 MPa (steel maker's sheet); 2/3 Rp1.0 = 111.33, min(5/6 Rp1.0; Rm/3) = 130.
    const at = (elongationPercent: number): number => {
      const stress = evaluate(designStress, {
        ...base,
        proofStrength1Pa: 167e6,
        proofStrength02Pa: 137e6,
        tensileStrengthPa: 390e6,
        elongationPercent,
      });
      return stress.ok ? stress.value.stressPa / 1e6 : Number.NaN;
    };
    expect(at(30)).toBeCloseTo(111.33, 2);
    expect(at(34.9)).toBeCloseTo(111.33, 2);
    expect(at(35)).toBeCloseTo(130, 6);
    expect(at(29)).toBeCloseTo(137 / 1.5, 6);
  });

  it('names the strength that it lacks', () => {
    const stress = evaluate(designStress, { ...base, tensileStrengthPa: 430e6, elongationPercent: 40 });
    expect(!stress.ok && stress.error.field).toBe('proofStrength1Pa');
    const ferritic = evaluate(designStress, { ...base, steel: 'ferritic', proofStrength02Pa: 182e6 });
    expect(!ferritic.ok && ferritic.error.field).toBe('tensileStrengthPa');
  });
});

describe('physical properties', () => {
  it('are on file with a source for every metal of the range', () => {
    for (const material of rated) {
      const density = materialDensity(material);
      const modulus = elasticModulusAt(material, celsius(200));
      expect(density.ok && density.value.value).toBeGreaterThan(4000);
      expect(modulus.ok && modulus.value.value).toBeGreaterThan(80e9);
      expect(density.ok && density.value.source).not.toBe('');
    }
  });

  it('fall with temperature for the modulus of 1.4404', () => {
    // Steel maker's data sheet S31603: 200 GPa at 20 °C, 186 GPa at 200 °C.
    const at = (temperatureC: number): number | false => {
      const modulus = elasticModulusAt('1.4404', celsius(temperatureC));
      return modulus.ok && modulus.value.value / 1e9;
    };
    expect(at(20)).toBeCloseTo(200, 6);
    expect(at(110)).toBeCloseTo(193, 6);
    expect(at(200)).toBeCloseTo(186, 6);
  });

  it('stand in rising temperature in every table', () => {
    for (const grade of materialGrades) {
      for (const curve of [grade.elasticModulusGPa, grade.expansionPerMK]) {
        const temperatures = curve?.temperaturesC ?? [];
        expect([...temperatures].sort((a, b) => a - b)).toEqual(temperatures);
      }
    }
  });
});
