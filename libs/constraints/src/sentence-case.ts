/** Prefixes of chemical names that stay small: n-hexane becomes n-Hexane. */
const beginning = /^((?:[a-z]|tert|sec|cis|trans)-)?(\p{Ll})/u;

/** A text that begins a sentence: its first letter is a capital. */
export const sentenceCase = (text: string): string =>
  text.replace(
    beginning,
    (_, prefix: string | undefined, letter: string) => (prefix ?? '') + letter.toUpperCase(),
  );
