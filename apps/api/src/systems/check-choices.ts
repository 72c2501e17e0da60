import { choiceTroubles } from '@flangewise/catalogue';
import { benchOf, specialsOf } from '@flangewise/constraints';
import type { System } from '@flangewise/model';
import type { FieldProblem } from '../errors/answer.js';
import { refuse } from '../errors/refusal.js';
import type { Workshop } from '../workshop/workshop.js';

/** Choices that the catalogue cannot serve: items that it does not have (any more), or has in another slot, slots left empty. */
export const choiceProblems = (system: System, { bench }: Workshop): FieldProblem[] =>
  choiceTroubles(system, benchOf(system, bench).range.items).map(({ path, given, message }) => ({
    field: path,
    given,
    problem: message,
  }));

function refuseReleases({ offer, specials, specialParts = [] }: System): void {
  if (offer?.discountReleasedBy !== undefined)
    throw refuse('RELEASE_IN_DOCUMENT', {
      field: 'offer.discountReleasedBy',
      given: offer.discountReleasedBy,
    });
  for (const [list, wishes] of Object.entries({ specials, specialParts }))
    wishes.forEach(({ releasedBy }, index) => {
      if (releasedBy !== undefined)
        throw refuse('RELEASE_IN_DOCUMENT', { field: `${list}[${index}].releasedBy`, given: releasedBy });
    });
}

function refuseImpossibleSpecials({ specials, specialParts = [] }: System, { bench }: Workshop): void {
  const wishes = [
    ...specials.map((wish, index) => ({ place: `specials[${index}]`, alone: { specials: [wish] } })),
    ...specialParts.map((wish, index) => ({
      place: `specialParts[${index}]`,
      alone: { specials: [], specialParts: [wish] },
    })),
  ];
  wishes.forEach(({ place, alone }) => {
    const made = specialsOf(alone, bench.range);
    if (made.ok) return;
    const { message, field, given } = made.error;
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
