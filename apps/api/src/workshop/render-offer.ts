import { benchOf, drawingFactsOf, nameSources, type Bench } from '@flangewise/constraints';
import {
  type Issue,
  offerDocumentsViewOf,
  type OfferView,
  renderOffer as renderLetter,
  renderOfferDocuments,
} from '@flangewise/documents';
import { inputFieldsOf } from '@flangewise/engineering';
import type { Assessment, Offer, SystemInput } from '@flangewise/model';
import { Audience } from '../generated/enums.js';
import { readSystem } from './read-system.js';

export interface RenderQuestion {
  readonly system: SystemInput;
  readonly offer: Offer;
  /** With evidence, and with what blocks the offer. */
  readonly assessment: Assessment;
  readonly issue: Issue;
}

/** A document of an offer. What holds item prices is for the maker; the client's copy of the same name goes without. */
export interface RenderedFile {
  readonly name: string;
  readonly audience: Audience;
  readonly mediaType: string;
  readonly content: Uint8Array;
}

/** The letter as the client reads it: its sums, and no price of an item. */
const withoutItemPrices = (view: OfferView): OfferView => ({
  ...view,
  positions: view.positions.map((position) => ({ ...position, unitPrice: null, total: null })),
});

/** All documents of an offer, for the maker and for the client; the letters differ and the rest is the same. */
export async function renderOffer(question: RenderQuestion, bench: Bench): Promise<readonly RenderedFile[]> {
  const { offer, issue } = question;
  const assessment = nameSources(question.assessment);
  const system = readSystem(question.system);
  const { range } = benchOf(system, bench);
  const drawn = drawingFactsOf(system, range, assessment);
  const view = offerDocumentsViewOf({
    system,
    items: range.items,
    offer,
    assessment,
    drawn,
    issue,
    inputFields: inputFieldsOf,
  });
  const files = await renderOfferDocuments(view);
  const clientLetter = await renderLetter(withoutItemPrices(view.offer), view.date);
  return files.flatMap(({ name, mediaType, bytes }) => {
    const file = { name, mediaType };
    const clientCopy = name === 'offer.pdf' ? clientLetter : bytes;
    return [
      { ...file, audience: Audience.maker, content: bytes },
      { ...file, audience: Audience.client, content: clientCopy },
    ];
  });
}
