/** Rounded to five significant digits, as the figures of an item are written. */
export const rounded = (value: number): number => Number(value.toPrecision(5));
