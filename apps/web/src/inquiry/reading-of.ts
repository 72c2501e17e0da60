import { customaryUnit, findUnit, formatQuantity, type Kind, parseQuantity } from '@flangewise/quantities';

/** In the customary unit every digit counts; what is converted is rounded. */
const digits = { given: 10, converted: 4 } as const;

/** Blanks are no difference, nor is which minus is typed. */
const bare = (text: string): string => text.replaceAll(/[\s\u2009\u2060]+/g, '').replace('−', '-');

/** How a typed quantity is read, where that is another text; undefined where nothing is to be said. */
export function readingOf(typed: string, kind: Kind): string | undefined {
  const outcome = parseQuantity(typed, kind);
  if (!outcome.ok) return undefined;
  const { si, unit, reference } = outcome.value;
  const asGiven = unit === findUnit(kind, customaryUnit[kind]) && reference !== 'absolute';
  const shown = formatQuantity(si, kind, { significantDigits: asGiven ? digits.given : digits.converted });
  return bare(shown) === bare(typed) ? undefined : shown;
}
