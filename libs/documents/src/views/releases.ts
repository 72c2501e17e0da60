/** Somebody's word that a discount, or what lies outside the standard range, may go out. */
export interface GivenRelease {
  readonly what: 'discount' | 'special';
  readonly by: string;
}

/**
 * What was released, each with who did: "special: E. Example". Nobody releases a document as a whole, so a name never
 * stands alone.
 */
export const releaseTexts = (releases: readonly GivenRelease[]): readonly string[] =>
  (['special', 'discount'] as const).flatMap((kind) => {
    const names = [...new Set(releases.filter(({ what }) => what === kind).map(({ by }) => by))];
    return names.length === 0 ? [] : [`${kind}: ${names.join(', ')}`];
  });
