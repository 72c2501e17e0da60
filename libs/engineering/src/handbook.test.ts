import { describe, expect, it } from 'vitest';
import { fieldTable } from './field-table.js';
import { handbookPage, handbookPages } from './handbook.js';
import { allReferenceCases, allSamples, referenceCases } from './reference-cases.js';
import { calculations } from './registry.js';
import { gasArea } from './relief/gas-area.js';
import { worstInflow } from './relief/worst-inflow.js';
import { findSource } from './sources.js';
import { cylinderPressure } from './strength/cylinder-pressure.js';
import { powerNumber } from './stirring/power-number.js';

const allCases = allReferenceCases();
const pagesWithCases = handbookPages(calculations, allCases, allSamples());

describe('a handbook page', () => {
  const page = handbookPage(gasArea, referenceCases('relief'));

  it('shows the formula in TeX and the range', () => {
    expect(page).toContain(`$$\n${gasArea.formula}\n$$`);
    expect(page).toContain(`Holds for: ${gasArea.range}`);
  });

  it('shows each field with symbol, unit, allowed values and meaning', () => {
    expect(page).toContain(
      '| `isentropicExponent` | k | 1 | number ≥ 1, ≤ 2 | yes | Isentropic exponent (ratio of heat capacities for an ideal gas) |',
    );
    expect(page).toMatch(/\| `backPressurePaAbs` \| p_2 \| Pa \| number ≥ 0 \| no \|/u);
    expect(page).toContain('| `areaM2` | A | m2 | number | yes | Required flow area |');
  });

  it('shows the fields of lists of objects', () => {
    expect(handbookPage(worstInflow, [])).toMatch(/`notComputed\[\]\.missing` \|.*list of text/u);
  });

  it('shows its own reference cases with tolerance and basis, and no others', () => {
    expect(page).toMatch(/\| gap-psv-gas \|.*\| areaM2 = 0\.0003297 \| 0\.5 % \|.*\| published example \|/u);
    expect(page).not.toContain('rel-fire-1');
  });

  it('gives the full citation of a key', () => {
    expect(page).toMatch(/api-520-1:2020 .* — API Standard 520, .*10th edition \(2020\)/u);
  });

  it('works its first sample through, step by step', () => {
    // Hoop membrane by hand: 2 f z e / (D_i + e).
    const sample = {
      calculation: 'strength.cylinderPressure',
      inputs: {
        code: 'EN 13445-3',
        innerRadiusM: 0.1,
        thicknessM: 0.01,
        allowableStressPa: 1e8,
        jointEfficiency: 1,
      },
    };
    const worked = handbookPage(
      cylinderPressure,
      [],
      [{ ...sample, calculation: 'x.y', inputs: {} }, sample],
    );
    expect(worked).toContain('Given: code = EN 13445-3; innerRadiusM = 0.1;');
    expect(worked).toContain(
      '| P | 2 · f · z · e / (D_i + e) | 2 × 100000000 × 1 × 0.01 / (0.2 + 0.01) | 9523810 | Pa |',
    );
    expect(worked).toContain('Result: pressurePaGauge = 9523810');
    expect(handbookPage(cylinderPressure, [])).toContain('## Worked example\n\nNone.');
  });

  it('shows a long list of results by its ends', () => {
    const page = pagesWithCases.get('heat.circulator-curve.md') ?? '';
    expect(page).toMatch(/Result: timesS = \[0,\d+,\d+,"…",\d+\]; /u);
    expect(page).toContain('Given: batchMassKg');
  });

  it('warns where values are from memory, and only there', () => {
    expect(handbookPage(powerNumber, [])).toContain('from memory, unverified. Check them');
    expect(page).not.toContain('from memory');
  });

  it('ends with the usual caution', () => {
    expect(page).toMatch(/does not replace, the work of a qualified pressure-equipment engineer/u);
  });

  it('keeps pipes out of its tables', () => {
    const noisy = handbookPage(gasArea, [
      {
        id: 'a|b',
        calculation: gasArea.id,
        inputs: {},
        expected: {},
        relativeTolerance: 0,
        source: 'x\ny',
        basis: 'published',
      },
    ]);
    expect(noisy).toContain(String.raw`| a\|b |  |  | equal | x y | published |`);
  });
});

describe('the handbook', () => {
  it('has one page a calculation, named by its id', () => {
    const pages = handbookPages(calculations, []);
    expect(pages.size).toBe(calculations.length + 1);
    expect(pages.get('relief.gas-area.md')).toContain('# Relief area for gas or vapour');
  });
});

describe.each(calculations.map((subject) => [subject.id, subject] as const))(
  'the page of %s',
  (id, subject) => {
    const page =
      pagesWithCases.get(`${id.replace(/[A-Z]/gu, (letter) => `-${letter.toLowerCase()}`)}.md`) ?? '';

    it('has title, name, range, every field, every source and the caution', () => {
      expect(page.startsWith(`# ${subject.title}\n\n\`${id}\`\n`)).toBe(true);
      expect(page).toContain(`Holds for: ${subject.range}`);
      for (const [part, schema] of [
        ['Inputs', subject.inputs],
        ['Outputs', subject.outputs],
      ] as const) {
        const section = page.split(`## ${part}\n`)[1]?.split('\n## ')[0] ?? '';
        for (const { field, symbol = '', unit = '' } of fieldTable(schema)) {
          expect(section).toContain(`| \`${field}\` | ${symbol.replaceAll('|', String.raw`\|`)} | ${unit} |`);
        }
      }
      for (const { citation, basis } of subject.source) {
        expect(page).toContain(`- ${citation} — ${findSource(citation)?.citation ?? 'no source'}`);
        expect(page).toContain(basis);
      }
      expect(page).toContain('does not replace, the work of a qualified pressure-equipment engineer');
    });

    it('has a worked example with every step', () => {
      expect(page).toMatch(/## Worked example\n\nGiven: .*\n\n\| Symbol \| Formula \|[^#]*\n\nResult: /u);
    });

    it('is listed', () => {
      expect(pagesWithCases.get('README.md')).toContain(
        `| [\`${id}\`](${id.replace(/[A-Z]/gu, (letter) => `-${letter.toLowerCase()}`)}.md) | ${subject.title} |`,
      );
    });

    it('has its formula in TeX, and every reference case', () => {
      expect(page).toContain(`$$\n${subject.formula}\n$$`);
      for (const item of allCases.filter(({ calculation }) => calculation === id)) {
        expect(page).toContain(`| ${item.id.replaceAll('|', String.raw`\|`)} |`);
      }
    });

    it('marks what is from memory, and only that', () => {
      const remembered = subject.source.some(({ basis }) => basis === 'from memory, unverified');
      expect(page.includes('**from memory, unverified**')).toBe(remembered);
      expect(page.includes('> Part of this rests on values from memory, unverified.')).toBe(remembered);
    });
  },
);
