/** Somebody's word that a discount, or what lies outside the standard range, may go out. */
export interface GivenRelease {
  readonly what: 'discount' | 'special';
  readonly by: string;
}

const inOrder = ['special', 'discount'] as const;

/**
 * What was released, and who did, in the same order: "special, discount" "by E. Example; by D. Example". Nobody releases a
 * document as a whole, so a name never stands alone. Undefined where nothing was released.
 */
export const releaseTexts = (
  releases: readonly GivenRelease[],
): { readonly what: string; readonly by: string } | undefined => {
  const kinds = inOrder.filter((kind) => releases.some(({ what }) => what === kind));
  const names = kinds.flatMap((kind) => releases.filter(({ what }) => what === kind).map(({ by }) => by));
  return kinds.length === 0
    ? undefined
    : { what: kinds.join(', '), by: [...new Set(names)].map((name) => `by ${name}`).join('; ') };
};
