/**
 * Text that no spreadsheet takes for a formula: a leading =, +, −, @, tab or carriage return gets an apostrophe before it, and
 * so does what already has one there.
 *
 * @source OWASP, CSV Injection
 */
export const guarded = (text: string): string => (/^'*[=+\-@\t\r]/.test(text) ? `'${text}` : text);

/** The text as it was before. */
export const unguarded = (text: string): string => (/^'+[=+\-@\t\r]/.test(text) ? text.slice(1) : text);
