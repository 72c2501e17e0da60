import { describe, expect, it } from 'vitest';
import { sampleOffer } from '../fixtures/sample-offer.js';
import { checkCountText, checkRowsOf, checksSentence } from './check-rows.js';

const { assessment } = sampleOffer();
const naming = { numbers: new Map([['sets[0].relief', 9]] as const), setName: () => null };
const rows = checkRowsOf(assessment.results, naming);
const row = (title: string) => rows.find((one) => one.title === title)!;
const plain = (text: string): string => text.replace(/[\u2009\u2060]+/g, ' ');

describe('rows of the compliance summary', () => {
  it('stand worst first', () => {
    expect(rows.map(({ status }) => status)).toEqual([
      'not met',
      'not decidable',
      'outside standard range',
      'met with caution',
      'met',
      'met',
      'met',
    ]);
  });

  it('show a limit rounded down and a demand rounded up, and the margin rounded down', () => {
    const ratio = row('Operating ratio of the disc');
    expect([ratio.demand, ratio.limit, ratio.margin].map(plain)).toEqual([
      '60 bar(g)',
      '61.5 bar(g)',
      '+1.56 bar',
    ]);
    expect(plain(row('Seal temperature').demand)).toBe('115 °C');
    expect(plain(row('Seal temperature').margin)).toBe('+145 K');
  });

  it('tell no negative margin of what does not fail', () => {
    const ratio = assessment.results.find(({ title }) => title === 'Operating ratio of the disc')!;
    const marginOf = (status: typeof ratio.status): string =>
      plain(checkRowsOf([{ ...ratio, kind: 'advice', status, reserve: -1e5 }], naming)[0]?.margin ?? '?');
    expect(marginOf('met with caution')).toBe('');
    expect(marginOf('not met')).toBe('−1 bar');
  });

  it('say what is missing and never give it a number', () => {
    const open = row('Relief area');
    expect([plain(open.demand), plain(open.limit), open.margin]).toEqual(['?', '28.3 mm²', 'open']);
    expect(open.utilisation).toBeNull();
  });

  it('name the parts by the numbers of the drawing', () => {
    expect(row('Relief area').parts).toBe('9');
  });

  it('tell judgements of one rule that agree in one row', () => {
    const wetted = { ...assessment.results[6]!, text: 'Cover: no verdict.', slots: ['sets[0].cover'] };
    const both = checkRowsOf(
      [wetted, { ...wetted, text: 'Shaft: no verdict.', slots: ['sets[0].shaft'] }],
      naming,
    );
    expect(both).toHaveLength(1);
    expect(both[0]!.text).toBe('Cover: no verdict. Shaft: no verdict.');
  });

  it('are counted in words', () => {
    expect(checkCountText([])).toBe('0 checks');
    expect(checkCountText(assessment.results.slice(0, 1))).toMatch(/^1 check: 1 /);
    expect(checksSentence(assessment.results)).toBe(
      '7 checks: 3 met, 1 met with caution, 1 not met, 1 outside the standard range, 1 not decidable. The thick line marks the limit.',
    );
  });
});
