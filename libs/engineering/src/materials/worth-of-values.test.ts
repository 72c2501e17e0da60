import { describe, expect, it } from 'vitest';
import { evaluate } from '../calculation.js';
import { compatibilityOf } from './compatibility.js';
import { designStress } from './design-stress.js';
import { designStressAt } from './design-stress-at.js';
import { materialGrades } from './material-grade.js';
import { media } from './medium.js';
import { strengthAt, type StrengthTable } from './strength-table.js';

const table: StrengthTable = {
  material: 'a steel',
  names: [],
  preferred: false,
  quantity: 'Rp0.2',
  kind: 'minimum',
  code: undefined,
  level: undefined,
  source: 'this test',
  points: [
    { temperatureK: 300, stressPa: 200e6, basis: 'published' },
    { temperatureK: 400, stressPa: 100e6, basis: 'from memory, unverified' },
    { temperatureK: 500, stressPa: 80e6, basis: 'published' },
  ],
};

describe('a strength between two rows', () => {
  it.each([
    [250, 200e6, 'published'],
    [300, 200e6, 'published'],
    [350, 150e6, 'from memory, unverified'],
    [400, 100e6, 'from memory, unverified'],
    [450, 90e6, 'from memory, unverified'],
    [500, 80e6, 'published'],
    // A hundredth of a kelvin of rounding still counts as on the row.
    [499.96, 80.008e6, 'published'],
    [499.9, 80.02e6, 'from memory, unverified'],
    [500.04, 80e6, 'published'],
  ])('at %d K is on the straight line, and worth the weaker of both', (temperatureK, stressPa, basis) => {
    const found = strengthAt(table, temperatureK);
    expect(found.ok && found.value.stressPa / stressPa).toBeCloseTo(1, 9);
    expect(found.ok && found.value.basis).toBe(basis);
  });

  it('ends with the last row, which it names', () => {
    expect(strengthAt(table, 500.06)).toMatchObject({
      ok: false,
      error: { allowed: 'up to 500 K for a steel, where the table ends (this test)' },
    });
  });
});

describe('nominal design stress', () => {
  const of = (inputs: object) => {
    const found = evaluate(designStress, { code: 'EN 13445-3', ...inputs } as never) as {
      ok: boolean;
      value?: { stressPa: number };
    };
    return found.value?.stressPa;
  };

  it('of a ferritic steel is the lower of R_p0.2/1.5 and R_m/2.4, whatever its elongation', () => {
    const steel = { steel: 'ferritic', elongationPercent: 40 };
    expect(of({ ...steel, proofStrength02Pa: 400e6, tensileStrengthPa: 480e6 })).toBeCloseTo(200e6, 3);
    expect(of({ ...steel, proofStrength02Pa: 240e6, tensileStrengthPa: 480e6 })).toBeCloseTo(160e6, 3);
  });

  it('names the rule of a nickel alloy apart from that of a steel', () => {
    const rule = (material: string): string | false => {
      const found = designStressAt(material, 373.15);
      return found.ok && found.value.rule;
    };
    expect(rule('2.4819')).toMatch(/applied to a nickel alloy.*Rp0\.2 = \d{3}(\.\d+)? MPa/u);
    expect(rule('P265GH')).toMatch(/^EN 13445-3 clause 6: min\(Rp0\.2\/1\.5; Rm\/2\.4\)/u);
    expect(rule('316L')).toBe('EN 13445-3 clause 6, austenitic: Rp1.0/1.5 with Rp1.0 = 199 MPa');
  });
});

describe('the worth of a verdict', () => {
  const rank = ['published', 'common practice', 'from memory, unverified'];

  it('is that of the weakest row where all must hold, and of the best where one is enough to warn', () => {
    const seen = new Set<string>();
    for (const { key: material } of materialGrades) {
      for (const { key: medium } of media) {
        for (const massPercent of [undefined, 10, 60]) {
          const found = compatibilityOf({ material, medium, temperatureK: 330, massPercent, dry: false });
          if (!found.ok) continue;
          const { verdict, reasons, basis } = found.value;
          const worths = reasons
            .filter((reason) => reason.verdict === verdict)
            .map((reason) => rank.indexOf(reason.basis));
          const expected = verdict !== 'suitable' && worths.includes(0) ? 0 : Math.max(...worths);
          expect(rank.indexOf(basis)).toBe(expected);
          seen.add(`${verdict} ${basis}`);
        }
      }
    }
    expect(seen.size).toBeGreaterThan(4);
  });

  it('takes moist from the name of the medium, whatever else is said', () => {
    for (const { key, implies } of media) {
      if (implies?.moist !== true) continue;
      const verdict = (rest: object) => {
        const found = compatibilityOf({ material: 'Ti Gr 2', medium: key, temperatureK: 293.15, ...rest });
        return found.ok ? found.value.verdict : found.error.code;
      };
      expect(verdict({ dry: true })).toBe(verdict({}));
    }
  });
});
