import { specialsOf } from '@flangewise/constraints';
import type { Assessment, Offer, SystemInput } from '@flangewise/model';
import { makeOffer, type MadeOffer, type QuotationTrouble, type SpecialPart } from '@flangewise/quotation';
import type { FieldProblem } from '../errors/answer.js';
import { refuse } from '../errors/refusal.js';
import type { ReleaseKind } from '../generated/enums.js';
import { readSystem } from '../workshop/read-system.js';
import type { Workshop } from '../workshop/workshop.js';
import type { Blocking } from './blocking.js';

/** What an engineer decides about an offer; discount and tax that are not given are those that the system names. */
export interface OfferTerms {
  readonly number: string;
  readonly revision: string;
  readonly date: string;
  readonly client?: string | undefined;
  readonly discountPercent?: string | undefined;
  readonly taxPercent?: string | undefined;
}

export interface OfferQuestion {
  readonly workshop: Workshop;
  readonly system: SystemInput;
  readonly terms: OfferTerms;
}

export interface ComposedOffer {
  readonly offer: Offer;
  readonly blocking: Blocking;
  /** With evidence; as if nothing were released. */
  readonly assessment: Assessment;
}

/** Whoever releases is asked for later; here it only matters that somebody does. */
const somebody = 'released';

function refuseTrouble({ code, message, path }: QuotationTrouble): never {
  const fields: readonly FieldProblem[] = path === undefined ? [] : [{ field: path, problem: message }];
  throw refuse('OFFER_NOT_POSSIBLE', { problem: message }, { fields, details: { code } });
}

function specialParts(
  { workshop, system: document }: OfferQuestion,
  released: boolean,
): readonly SpecialPart[] {
  const priceList = workshop.priceListFor(document).id;
  const made = specialsOf(readSystem(document), workshop.pricedRange(priceList));
  if (!made.ok) throw refuse('SPECIAL_NOT_POSSIBLE', { problem: made.error.message });
  return made.value.map(({ releasedBy: _, ...part }) => ({
    ...part,
    ...(released ? { releasedBy: somebody } : {}),
  }));
}

/** The offer as it is when these releases are given. */
function madeWith(
  question: OfferQuestion,
  released: readonly ReleaseKind[],
): MadeOffer & { assessment: Assessment } {
  const { workshop, system: document, terms } = question;
  const specialsReleased = released.includes('special');
  const {
    discountPercent = document.offer?.discountPercent,
    taxPercent = document.offer?.taxPercent,
    client,
    ...fixed
  } = terms;
  const system = readSystem({
    ...document,
    offer: {
      ...fixed,
      priceList: workshop.priceListFor(document).id,
      ...(client === undefined ? {} : { client }),
      ...(discountPercent === undefined ? {} : { discountPercent }),
      ...(taxPercent === undefined ? {} : { taxPercent }),
      ...(released.includes('discount') ? { discountReleasedBy: somebody } : {}),
    },
  });
  const assessment = workshop.assess(document, { withEvidence: true, specialsReleased });
  const { ruleRevision, openPoints, cautions, blocking } = assessment;
  const made = makeOffer({
    system,
    catalogue: workshop.catalogue,
    specials: specialParts(question, specialsReleased),
    ruleRevision,
    openPoints,
    cautions,
    blocking,
  });
  return made.ok ? { ...made.value, assessment } : refuseTrouble(made.error);
}

/**
 * The offer of a system by the catalogue, the rules and the price list in force, with nothing released, and which sentence
 * against it falls with which release.
 */
export function composeOffer(question: OfferQuestion): ComposedOffer {
  const { offer, blocking, assessment } = madeWith(question, []);
  const goneWith = (kind: ReleaseKind): readonly string[] => {
    const left = madeWith(question, [kind]).blocking;
    return blocking.filter((sentence) => !left.includes(sentence));
  };
  const discount = [...goneWith('discount')];
  const special = [...goneWith('special')];
  const released = [...discount, ...special];
  const always = blocking.filter((sentence) => !released.includes(sentence));
  return { offer, blocking: { always, discount, special }, assessment };
}
