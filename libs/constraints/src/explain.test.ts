import { demoCatalogue } from '@flangewise/catalogue';
import { type ExplainAnswer, type InquiryInput, readDocument, systemSchema } from '@flangewise/model';
import { describe, expect, it } from 'vitest';
import { createBench } from './bench.js';
import { explain } from './explain.js';
import { rangeOf } from './range.js';
import { ruleBook } from './rule-book.js';

const bench = createBench(rangeOf(demoCatalogue, { deliveryDays: () => 0 }), ruleBook);

const explained = (inquiry: InquiryInput): ExplainAnswer => {
  const system = readDocument(systemSchema, { inquiry });
  if (!system.ok) throw new Error(JSON.stringify(system.error));
  return explain(system.value, bench);
};

const hot = {
  media: [{ substance: 'hydrogen', role: 'gas' as const }],
  pressure: { highest: '400 bar' },
  temperature: { highest: '300 °C' },
};

describe('the explanation of an inquiry that nothing answers', () => {
  const [tooHigh] = explained({ title: 'High', process: hot, sets: [{ statedVolume: '2 L' }] }).conflicts;

  it('names the nearest part of the size that was asked for, not the smallest of the range', () => {
    expect(tooHigh?.statements.map(({ path }) => path)).toEqual(['process.pressure.highest']);
    expect(tooHigh?.rules[0]?.text).toMatch(/^Vessel 2 L,.* is rated .*; 400.{1,2}bar\(g\) is asked\.$/u);
  });

  it('names the special that would do', () => {
    expect(tooHigh?.special).toMatch(/^Special vessel 2 L.* would do, .* reviewed and released\.$/u);
  });

  it('says what keeps a wish from being met, not that it is not met', () => {
    const [conflict] = explained({
      title: 'Glass',
      process: { pressure: { highest: '100 bar' } },
      sets: [{ construction: 'glass' }],
    }).conflicts;
    expect(conflict?.rules.map(({ id }) => id)).toContain('strength.part-pressure');
  });
});
