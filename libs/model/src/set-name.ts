/** What a vessel set is called in a sentence: its label, or its number (the first is 1). */
export const setName = (label: string | null | undefined, index: number): string =>
  label ?? `set ${String(index + 1)}`;
