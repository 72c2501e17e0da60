import type { Evidence, RuleResult } from '@flangewise/model';
import { stepValueText } from './figure-text.js';

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

const inputText = (value: unknown): string => {
  if (typeof value === 'number') return String(Number(value.toPrecision(6))).replace('-', '−');
  if (typeof value === 'string' || typeof value === 'boolean') return String(value);
  if (Array.isArray(value)) return value.map(inputText).join(', ');
  if (value === null || value === undefined) return 'not given';
  return Object.entries(value)
    .map(([name, inner]) => `${name} ${inputText(inner)}`)
    .join(' ');
};

const sheetOf = (
  evidence: RuleResult['evidence'][number],
  number: number,
  checks: readonly string[],
): EvidenceSheet => ({
  number,
  title: evidence.title,
  checks,
  inputs: Object.entries(evidence.inputs)
    .map(([name, value]) => `${name} = ${inputText(value)}`)
    .join('; '),
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
export const evidenceSheetsOf = (results: readonly RuleResult[]): EvidenceSheet[] => {
  const found = new Map<string, { evidence: RuleResult['evidence'][number]; checks: Set<string> }>();
  for (const result of results)
    for (const evidence of result.evidence) {
      const key = `${evidence.calculation} ${JSON.stringify(evidence.inputs satisfies Evidence['inputs'])}`;
      const known = found.get(key);
      if (known === undefined) found.set(key, { evidence, checks: new Set([result.title]) });
      else known.checks.add(result.title);
    }
  return [...found.values()].map(({ evidence, checks }, i) => sheetOf(evidence, i + 1, [...checks]));
};
