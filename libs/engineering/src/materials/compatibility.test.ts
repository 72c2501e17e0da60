import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Compatibility, compatibilityOf, type Exposure } from './compatibility.js';
import { corrosionFields } from './corrosion-rule.js';
import rules from './corrosion-rules.json' with { type: 'json' };
import { materialGrades } from './material-grade.js';
import { media } from './medium.js';

const celsius = (value: number): number => value + 273.15;

type Short = Omit<Exposure, 'material' | 'medium' | 'temperatureK'>;

const verdict = (
  material: string,
  [medium, temperatureC]: readonly [string, number],
  rest: Short = {},
): string => {
  const result = compatibilityOf({ material, medium, temperatureK: celsius(temperatureC), ...rest });
  return result.ok ? result.value.verdict : result.error.code;
};

const found = (exposure: Exposure): Compatibility => {
  const result = compatibilityOf(exposure);
  if (!result.ok) throw new Error(result.error.message);
  return result.value;
};

describe('reactive metals', () => {
  it('forbid titanium in dry chlorine and dry methanol', () => {
    // materials encyclopaedia on the web, titanium and halogens (about 1 % water); methanol with 0.4 % HCl and less than 1.5 % water: abstract.
    expect(verdict('Ti Gr 2', ['chlorine', 20], { dry: true })).toBe('forbidden');
    expect(verdict('Ti Gr 2', ['chlorine, dry', 20])).toBe('forbidden');
    expect(verdict('Ti Gr 2', ['chlorine', 20], { waterPercent: 0.99 })).toBe('forbidden');
    expect(verdict('Ti Gr 2', ['chlorine', 20], { waterPercent: 1 })).toBe('suitable');
    expect(verdict('Ti Gr 2', ['methanol', 25], { dry: true })).toBe('forbidden');
    expect(verdict('Ti Gr 2', ['67-56-1', 25], { waterPercent: 2 })).toBe('suitable');
  });

  it('ask for the moisture where it decides', () => {
    const result = compatibilityOf({ material: 'Ti Gr 2', medium: 'methanol', temperatureK: 298.15 });
    expect(!result.ok && result.error.code).toBe('CALC_MISSING_PROPERTY');
    expect(!result.ok && result.error.message).toContain('waterPercent');
  });

  it('are cautious with zirconium in methanol while the acid is not known', () => {
    const open = found({ material: 'Zr 702', medium: 'methanol', temperatureK: celsius(60) });
    expect(open.verdict).toBe('caution');
    expect(open.missingInputs).toContain('hydrogenChloridePercent');
    expect(verdict('Zr 702', ['methanol', 60], { hydrogenChloridePercent: 0.1, waterPercent: 1 })).toBe(
      'forbidden',
    );
    expect(verdict('Zr 702', ['methanol', 60], { hydrogenChloridePercent: 0 })).toBe('suitable');
  });

  it('forbid tantalum, titanium and glass in caustic soda of 12 % at 180 °C', () => {
    const hot = ['caustic soda', 180] as const;
    for (const material of ['Ta', 'Ti Gr 2', 'borosilicate 3.3', '316L']) {
      expect(verdict(material, hot, { massPercent: 12 })).toBe('forbidden');
    }
    for (const material of ['alloy 600', 'C-276', 'alloy 625', 'C-22']) {
      expect(verdict(material, hot, { massPercent: 12 })).toBe('caution');
    }
  });

  it('watch hydrogen with its temperature', () => {
    for (const material of ['Ti Gr 2', 'Zr 702', 'Ta']) {
      expect(verdict(material, ['hydrogen', 300], { dry: true, pressureBar: 20 })).toBe('forbidden');
      expect(verdict(material, ['hydrogen', 120], { waterPercent: 3, pressureBar: 20 })).toBe('caution');
    }
    expect(verdict('1.4404', ['hydrogen', 300], { pressureBar: 60 })).toBe('suitable');
  });
});

describe('hydrochloric acid of 20 % at 130 °C', () => {
  it.each([
    ['borosilicate 3.3', 'caution'],
    ['tantalum', 'suitable'],
    ['316L', 'forbidden'],
    ['Ti Gr 2', 'forbidden'],
    ['C-276', 'forbidden'],
  ])('%s: %s', (material, expected) => {
    expect(verdict(material, ['hydrochloric acid', 130], { massPercent: 20 })).toBe(expected);
  });

  it('suits zirconium only without ferric ions', () => {
    expect(verdict('Zr 702', ['hydrochloric acid', 130], { massPercent: 20, ferricPpm: 0 })).toBe('suitable');
    expect(verdict('Zr 702', ['hydrochloric acid', 130], { massPercent: 20 })).toBe('caution');
    expect(verdict('Zr 702', ['hydrochloric acid', 130.5], { massPercent: 20, ferricPpm: 0 })).toBe(
      'caution',
    );
  });
});

describe('stainless steel in water with chloride', () => {
  it.each([
    [50, 100, 'suitable'],
    [50, 100.5, 'forbidden'],
    [200, 80, 'suitable'],
    [201, 80, 'forbidden'],
    [10_000, 50, 'suitable'],
    [20_000, 41, 'forbidden'],
  ])('%d mg/L at %d °C: %s', (chlorideMgPerL, temperatureC, expected) => {
    // Limits of an open implementation naming NORSOK M-001, EFC 17 and MTI 15.
    expect(verdict('316L', ['chlorides', temperatureC], { chlorideMgPerL })).toBe(expected);
  });

  it('warns of chloride in any other watery or organic medium', () => {
    expect(verdict('316L', ['acetone', 50])).toBe('suitable');
    expect(verdict('316L', ['acetic acid', 100], { chlorideMgPerL: 500 })).toBe('caution');
  });
});

describe('seals', () => {
  it('have limits of temperature whatever the medium', () => {
    // Supplier's high-temperature O-ring tables: FKM −20 to 200 °C, peak 230 °C; FFKM from −15 °C.
    expect(verdict('FKM', ['nitrogen', -20], { pressureBar: 5 })).toBe('suitable');
    expect(verdict('FKM', ['nitrogen', -21], { pressureBar: 5 })).toBe('forbidden');
    expect(verdict('FKM', ['nitrogen', 201], { pressureBar: 5 })).toBe('caution');
    expect(verdict('FKM', ['phosgene', 231])).toBe('forbidden');
    expect(verdict('FFKM', ['toluene', -16])).toBe('forbidden');
    expect(verdict('FFKM', ['toluene', 150])).toBe('suitable');
  });

  it('warn of rapid gas decompression above a pressure', () => {
    expect(verdict('FKM', ['hydrogen', 80], { pressureBar: 20 })).toBe('suitable');
    expect(verdict('FKM', ['hydrogen', 80], { pressureBar: 60 })).toBe('caution');
    expect(verdict('FKM', ['hydrogen', 80])).toBe('CALC_MISSING_PROPERTY');
    expect(verdict('FKM', ['methanol', 40])).toBe('caution');
    expect(verdict('EPDM', ['toluene', 40])).toBe('forbidden');
    expect(verdict('PTFE', ['toluene', 40])).toBe('suitable');
    expect(verdict('graphite', ['nitric acid', 60], { massPercent: 65 })).toBe('forbidden');
  });
});

describe('what is not known', () => {
  it('is named as the pair', () => {
    const result = compatibilityOf({ material: 'HNBR', medium: 'phosgene', temperatureK: 300 });
    expect(!result.ok && result.error.code).toBe('CALC_MISSING_PROPERTY');
    expect(!result.ok && result.error.message).toMatch(/HNBR in phosgene/);
  });

  it('gives no verdict on carbon steel in hydrogen', () => {
    expect(verdict('carbon steel', ['hydrogen', 200], { pressureBar: 50 })).toBe('CALC_MISSING_PROPERTY');
  });

  it('has a code for unknown names', () => {
    expect(verdict('cheese', ['water', 20])).toBe('CALC_UNKNOWN_MATERIAL');
    expect(verdict('316L', ['cheese', 20])).toBe('CALC_UNKNOWN_SUBSTANCE');
  });
});

const stated = fc.record(
  Object.fromEntries(corrosionFields.map((field) => [field, fc.double({ min: 0, max: 100, noNaN: true })])),
  { requiredKeys: [] },
);
const pair = fc.tuple(
  fc.constantFrom(...materialGrades.map(({ key }) => key)),
  fc.constantFrom(...media.map(({ key }) => key)),
);

describe('corrosion rows', () => {
  it('name only materials and media that exist', () => {
    const materials = new Set(materialGrades.flatMap(({ key, families }) => [key, ...families]));
    const mediaNames = new Set(['*', ...media.flatMap(({ key, families }) => [key, ...families])]);
    expect(rules.flatMap((rule) => rule.materials).filter((name) => !materials.has(name))).toEqual([]);
    expect(rules.flatMap((rule) => rule.media).filter((name) => !mediaNames.has(name))).toEqual([]);
  });
});

describe('every pair of material and medium', () => {
  it('has a verdict with reasons or a coded error', () => {
    fc.assert(
      fc.property(
        pair,
        fc.double({ min: 100, max: 700, noNaN: true }),
        stated,
        ([material, medium], temperatureK, rest) => {
          const result = compatibilityOf({ material, medium, temperatureK, ...rest });
          if (!result.ok) expect(result.error.code).toBe('CALC_MISSING_PROPERTY');
          else {
            expect(result.value.reasons.length).toBeGreaterThan(0);
            expect(result.value.reasons[0]?.verdict).toBe(result.value.verdict);
            expect(result.value.reasons.every(({ source }) => source !== '')).toBe(true);
          }
        },
      ),
      { numRuns: 2000 },
    );
  });

  it('does not get better when a metal gets hotter', () => {
    const severity = { suitable: 0, caution: 1, forbidden: 2 } as const;
    const metals = materialGrades.filter(({ families }) => families.includes('metal')).map(({ key }) => key);
    const worse: string[] = [];
    fc.assert(
      fc.property(
        fc.constantFrom(...metals),
        fc.constantFrom(...media.map(({ key }) => key)),
        fc.tuple(
          fc.double({ min: 263, max: 650, noNaN: true }),
          fc.double({ min: 0, max: 200, noNaN: true }),
          stated,
        ),
        (material, medium, [temperatureK, rise, rest]) => {
          const cool = compatibilityOf({ material, medium, temperatureK, ...rest });
          const warm = compatibilityOf({ material, medium, temperatureK: temperatureK + rise, ...rest });
          if (cool.ok && warm.ok && severity[warm.value.verdict] < severity[cool.value.verdict]) {
            worse.push(
              `${material} in ${medium} ${JSON.stringify(rest)} ${String(temperatureK)} +${String(rise)}`,
            );
          }
        },
      ),
      { numRuns: 5000 },
    );
    expect(worse).toEqual([]);
  });
});
