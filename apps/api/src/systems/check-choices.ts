import { benchOf, specialsOf } from '@flangewise/constraints';
import { type Item, parseSlotPath, slots, type SlotPath, type System } from '@flangewise/model';
import type { FieldProblem } from '../errors/answer.js';
import { refuse } from '../errors/refusal.js';
import type { Workshop } from '../workshop/workshop.js';

/** Every choice of a system that names an item. */
const chosenItems = ({ frame, sets }: System): readonly { path: SlotPath; item: string }[] => [
  ...Object.entries(frame).flatMap(([slot, item]) =>
    typeof item === 'string' ? [{ path: `frame.${slot}` as const, item }] : [],
  ),
  ...sets.flatMap(({ choices }, set) =>
    Object.entries(choices).flatMap(([slot, item]) =>
      typeof item === 'string' ? [{ path: `sets[${set}].${slot}` as const, item }] : [],
    ),
  ),
];

/** A few item numbers of a slot, for whoever named one that is not there. */
const shownExamples = 5;

const problemOf = (item: Item | undefined, path: SlotPath, items: ReadonlyMap<string, Item>): string => {
  const slot = parseSlotPath(path)?.slot;
  if (slot === undefined) return 'there is no such slot';
  const allowed = [...items.values()].filter((one) => one.slot === slot).map((one) => one.id);
  const examples = `${allowed.slice(0, shownExamples).join(', ')}${allowed.length > shownExamples ? ', …' : ''}`;
  const wrong =
    item === undefined
      ? 'the catalogue has no such item (any more)'
      : `${item.name} belongs to ${slots[item.slot].title}`;
  return `${wrong}; allowed are the ${allowed.length} items of ${slots[slot].title}: ${examples}`;
};

/** Choices that the catalogue cannot serve: items that it does not have (any more), or has in another slot. */
export function choiceProblems(system: System, { bench }: Workshop): FieldProblem[] {
  const { items } = benchOf(system, bench).range;
  return chosenItems(system).flatMap(({ path, item: given }) => {
    const item = items.get(given);
    const slot = parseSlotPath(path)?.slot;
    return item !== undefined && item.slot === slot
      ? []
      : [{ field: path, given, problem: problemOf(item, path, items) }];
  });
}

function refuseReleases({ offer, specials }: System): void {
  if (offer?.discountReleasedBy !== undefined)
    throw refuse('RELEASE_IN_DOCUMENT', {
      field: 'offer.discountReleasedBy',
      given: offer.discountReleasedBy,
    });
  specials.forEach(({ releasedBy }, index) => {
    if (releasedBy !== undefined)
      throw refuse('RELEASE_IN_DOCUMENT', { field: `specials[${index}].releasedBy`, given: releasedBy });
  });
}

function refuseImpossibleSpecials({ specials }: System, { bench }: Workshop): void {
  specials.forEach((special, index) => {
    const made = specialsOf({ specials: [special] }, bench.range);
    if (made.ok) return;
    const { message, field, given } = made.error;
    const place = `specials[${index}]`;
    throw refuse(
      'SPECIAL_NOT_POSSIBLE',
      { problem: message },
      {
        fields: [
          {
            field: field === undefined ? place : `${place}.${field}`,
            problem: message,
            ...(given === undefined ? {} : { given: String(given) }),
          },
        ],
      },
    );
  });
}

/**
 * Refuses a system that can be neither saved nor offered: items or a price list that the catalogue does not have, specials
 * that cannot be computed, releases that nobody gave.
 */
export function checkChoices(system: System, workshop: Workshop): void {
  refuseReleases(system);
  workshop.priceListFor(system);
  refuseImpossibleSpecials(system, workshop);
  const fields = choiceProblems(system, workshop);
  if (fields.length === 0) return;
  const problems = fields.map(({ field, given, problem }) => `${field}: ${given ?? ''} given; ${problem}`);
  throw refuse(
    'CHOICES_NOT_IN_CATALOGUE',
    { catalogue: workshop.catalogue.revision, problems: problems.join('. ') },
    { fields },
  );
}
