import type { Evidence, RuleResult } from '@flangewise/model';
import { stepValueText } from './figure-text.js';
import { type InputFields, inputsText } from './input-text.js';

/** One calculation, so that a reader can redo it by hand. */
export interface EvidenceSheet {
  readonly number: number;
  readonly title: string;
  /** Checks that rest on it. */
  readonly checks: readonly string[];
  readonly inputs: string;
  readonly steps: readonly {
    readonly symbol: string;
    readonly formula: string;
    readonly substituted: string;
    readonly value: string;
    readonly note: string;
  }[];
  readonly range: string;
  readonly source: string;
}

interface Found {
  readonly evidence: RuleResult['evidence'][number];
  readonly checks: Set<string>;
}

const sheetOf = ({ evidence, checks }: Found, number: number, inputFields: InputFields): EvidenceSheet => ({
  number,
  title: evidence.title,
  checks: [...checks],
  inputs: inputsText(evidence.inputs, inputFields(evidence.calculation)),
  steps: evidence.steps.map(({ symbol, formula, substituted, value, unit, note }) => ({
    symbol,
    formula,
    substituted,
    value: stepValueText(value, unit),
    note: note ?? '',
  })),
  range: evidence.range,
  source: evidence.source
    .map(({ citation, basis }) => (basis === 'published' ? citation : `${citation} (${basis})`))
    .join('; '),
});

/** Every calculation once, with the checks that rest on it, in the order of the results. */
export const evidenceSheetsOf = (
  results: readonly RuleResult[],
  inputFields: InputFields,
): EvidenceSheet[] => {
  const found = new Map<string, Found>();
  for (const result of results)
    for (const evidence of result.evidence) {
      const key = `${evidence.calculation} ${JSON.stringify(evidence.inputs satisfies Evidence['inputs'])}`;
      const known = found.get(key);
      if (known === undefined) found.set(key, { evidence, checks: new Set([result.title]) });
      else known.checks.add(result.title);
    }
  return [...found.values()].map((one, i) => sheetOf(one, i + 1, inputFields));
};
