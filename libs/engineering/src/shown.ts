/** A number as it is put into a formula: six significant digits, no trailing zeros. */
export const shown = (value: number): string => String(Number(value.toPrecision(6)));
