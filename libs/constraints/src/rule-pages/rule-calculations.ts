import { citationText } from '@flangewise/engineering';
import type { RuleCalculation, RuleResult } from '@flangewise/model';

/** The calculations behind results, once each, with every formula that one of them went through. */
export const calculationsOf = (results: readonly RuleResult[]): readonly RuleCalculation[] => {
  const found = new Map<string, { head: Omit<RuleCalculation, 'formulas'>; formulas: Set<string> }>();
  for (const { calculation, title, range, source, steps } of results.flatMap(({ evidence }) => evidence)) {
    const known = found.get(calculation) ?? {
      head: {
        id: calculation,
        title,
        range,
        source: source.map((one) => ({ ...one, citation: citationText(one.citation) })),
      },
      formulas: new Set<string>(),
    };
    for (const { symbol, formula } of steps) if (formula !== '') known.formulas.add(`${symbol} = ${formula}`);
    found.set(calculation, known);
  }
  return [...found.values()].map(({ head, formulas }) => ({ ...head, formulas: [...formulas] }));
};
