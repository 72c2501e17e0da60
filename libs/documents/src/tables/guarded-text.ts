/**
 * Text that no spreadsheet takes for a formula: a leading =, +, −, @, tab or carriage return gets an apostrophe before it.
 *
 * @source OWASP, CSV Injection
 */
export const guardedText = (text: string): string => (/^[=+\-@\t\r]/.test(text) ? `'${text}` : text);
