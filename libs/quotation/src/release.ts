import type { BillLine } from './bill-of-materials.js';
import type { Discount } from './discount.js';

export interface ReleaseQuestion {
  readonly lines: readonly BillLine[];
  readonly discount: Discount;
  readonly discountReleasedBy?: string | undefined;
  /** Date of the offer; without one nothing is said of when an item is sold. */
  readonly date?: string | undefined;
  /** What the assessment says against it, each a sentence. */
  readonly technical: readonly string[];
}

/** Items that are not sold on the date of the offer. */
const notSold = (lines: readonly BillLine[], date: string | undefined): readonly string[] =>
  date === undefined
    ? []
    : lines.flatMap(({ item: { name, validFrom, validUntil, successor } }) => {
        if (validFrom !== undefined && date < validFrom)
          return [`${name} is sold from ${validFrom} on; the offer is dated ${date}.`];
        return validUntil !== undefined && date > validUntil
          ? [
              `${name} was sold until ${validUntil}; the offer is dated ${date}: choose ${successor ?? 'another item'}.`,
            ]
          : [];
      });

/** Everything that keeps an offer from being released, each a sentence; empty once it may go out. */
export const blockingOf = (question: ReleaseQuestion): readonly string[] => {
  const { lines, discount, discountReleasedBy, technical } = question;
  return [
    ...technical,
    ...notSold(lines, question.date),
    ...lines
      .filter(({ special }) => special !== undefined && special.releasedBy === undefined)
      .map(
        ({ item }) => `${item.name} is a special: an engineer has to review and an approver to release it.`,
      ),
    ...(discount.needsRelease && discountReleasedBy === undefined
      ? [`A discount of ${discount.percent.toString()} % needs the release of an approver.`]
      : []),
  ];
};

/** Printed across every page until nothing blocks the offer. */
export const watermarkOf = (blocking: readonly string[]): string | undefined =>
  blocking.length === 0 ? undefined : 'NOT RELEASED';
