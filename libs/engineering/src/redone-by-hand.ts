import type { Step } from '@flangewise/model';

/** Signs of the evidence as plain arithmetic: products, minus, powers as small digits, roots. */
const plain = (text: string): string =>
  text
    .replaceAll('×', '*')
    .replaceAll('·', '*')
    .replaceAll('−', '-')
    .replaceAll('²', '^2')
    .replaceAll('³', '^3')
    .replaceAll('⁴', '^4')
    .replaceAll('⁵', '^5')
    .replaceAll('√', 'sqrt')
    .replaceAll(';', ',');

const constants: Readonly<Record<string, number>> = { π: Math.PI };
const functions: Readonly<Record<string, (...values: number[]) => number>> = {
  sqrt: Math.sqrt,
  max: Math.max,
  min: Math.min,
  ln: Math.log,
  exp: Math.exp,
  sin: Math.sin,
  cos: Math.cos,
  tan: Math.tan,
};

/**
 * The value of a substituted formula, redone from its text alone. For tests.
 * @returns undefined where the text is more than arithmetic
 */
export const redone = (text: string): number | undefined => {
  const tokens = plain(text).match(/\d+(?:\.\d+)?(?:e[+-]?\d+)?|[\p{L}_]+|[-+*/^(),]|\S/giu) ?? [];
  let at = 0;
  const next = (sign: string): boolean => tokens[at] === sign && (at += 1) > 0;
  const list = (): number[] => {
    const values = [sum()];
    while (next(',')) values.push(sum());
    return values;
  };
  const atom = (): number => {
    const token = tokens[at];
    at += 1;
    if (token === undefined) return Number.NaN;
    if (token === '-') return -power();
    if (token === '(') {
      const value = sum();
      return next(')') ? value : Number.NaN;
    }
    const call = functions[token];
    if (call !== undefined) {
      if (!next('(')) return token === 'sqrt' ? Math.sqrt(atom()) : Number.NaN;
      const values = list();
      return next(')') ? call(...values) : Number.NaN;
    }
    return constants[token] ?? (/^\d/u.test(token) ? Number(token) : Number.NaN);
  };
  const power = (): number => {
    const base = atom();
    return next('^') ? base ** power() : base;
  };
  const product = (): number => {
    let value = power();
    for (;;) {
      if (next('*')) value *= power();
      else if (next('/')) value /= power();
      else return value;
    }
  };
  const sum = (): number => {
    let value = product();
    for (;;) {
      if (next('+')) value += product();
      else if (next('-')) value -= product();
      else return value;
    }
  };
  const value = sum();
  return at === tokens.length && Number.isFinite(value) ? value : undefined;
};

/**
 * What is wrong with steps of evidence: a formula into which no number was put, or numbers that give another value. For
 * tests.
 */
export const stepFaults = (steps: readonly Step[]): readonly string[] =>
  steps.flatMap(({ symbol, formula, substituted, value }) => {
    if (substituted === formula.replaceAll('·', '×')) {
      return [`${symbol}: no number is put into ${formula}`];
    }
    const again = typeof value === 'number' ? redone(substituted) : undefined;
    // Six digits are shown, and differences of like numbers lose some of them.
    return again === undefined ||
      typeof value !== 'number' ||
      Math.abs(again - value) <= 1e-3 * Math.abs(value) + 1e-12
      ? []
      : [`${symbol}: ${substituted} = ${String(again)}, not ${String(value)}`];
  });
