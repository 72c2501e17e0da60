const halvings = 14;
/** Where to begin the search for a number that has to grow: this many doublings are tried. */
const doublings = 8;

export interface Reach {
  readonly from: number;
  readonly easier: 'lower' | 'higher';
  /** The easiest value worth trying where lower is easier. */
  readonly floor: number;
}

const firstHolding = (
  { from, easier, floor }: Reach,
  holds: (value: number) => boolean,
): { readonly failing: number; readonly holding: number } | undefined => {
  if (easier === 'lower') return floor < from && holds(floor) ? { failing: from, holding: floor } : undefined;
  let failing = from;
  for (let k = 0, next = from * 2; k < doublings; k++, next *= 2) {
    if (holds(next)) return { failing, holding: next };
    failing = next;
  }
  return undefined;
};

/**
 * How far a number has to move until it holds: the largest that holds below `from` (`lower`), or the smallest above
 * it (`higher`). Undefined when nothing in reach holds. `holds` is monotone: easier stays easier.
 */
export const furthest = (reach: Reach, holds: (value: number) => boolean): number | undefined => {
  const first = firstHolding(reach, holds);
  if (first === undefined) return undefined;
  let { failing, holding } = first;
  for (let k = 0; k < halvings; k++) {
    const middle = (failing + holding) / 2;
    if (holds(middle)) holding = middle;
    else failing = middle;
  }
  return holding;
};
