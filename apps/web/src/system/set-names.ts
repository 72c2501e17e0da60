/** What the vessel sets are called, in their order. */
export const setNamesOf = (sets: readonly { readonly label?: string | undefined }[]): string[] =>
  sets.map(({ label }, i) => label ?? `Set ${String(i + 1)}`);

/** How the sets share their frame. */
export const arrangementText = (arrangement: string | undefined): string =>
  arrangement === 'parallel' ? 'working at once' : 'mounted one at a time';
