import type { Step } from '@flangewise/model';
import { shown } from './shown.js';

export interface FormulaStep {
  readonly symbol: string;
  /** Products written with `·`, so that the numbers stay apart once they are put in. */
  readonly formula: string;
  /** The number of each symbol that stands in the formula. */
  readonly where: Readonly<Record<string, number>>;
  readonly value: number;
  readonly unit: string;
  readonly note?: string | undefined;
}

/** A step of evidence whose numbers are put into the formula symbol by symbol. */
export const formulaStep = ({ symbol, formula, where, value, unit, note }: FormulaStep): Step => ({
  symbol,
  formula,
  substituted: formula
    .replace(/\p{L}[\p{L}\d_]*/gu, (name) => {
      const given = where[name];
      return given === undefined ? name : shown(given);
    })
    .replaceAll('·', '×'),
  value,
  unit,
  ...(note === undefined ? {} : { note }),
});
