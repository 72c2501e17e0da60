import type { Assessment, Offer, SystemInput } from '@flangewise/model';
import { watermarkOf } from '@flangewise/quotation';
import type { ReleaseKind } from '../generated/enums.js';
import { OfferState } from '../generated/enums.js';
import type { RenderedFile } from '../workshop/render-offer.js';
import type { Workshop } from '../workshop/workshop.js';
import { type Blocking, standing, waitsFor } from './blocking.js';

/** A revision of an offer with the releases that were given, before it is rendered. */
export interface DraftRevision {
  readonly system: SystemInput;
  /** As it was made, with nothing released. */
  readonly offer: Offer;
  readonly assessment: Assessment;
  readonly blocking: Blocking;
  readonly released: readonly { readonly what: ReleaseKind; readonly by: string }[];
  readonly author: string;
}

export interface WrittenRevision {
  readonly document: Offer;
  readonly state: OfferState;
  readonly files: readonly RenderedFile[];
}

const stateTexts = {
  draft: 'draft',
  in_review: 'in review',
  sent: 'sent',
  replaced: 'replaced',
} as const satisfies Record<OfferState, Offer['state']>;

/** How an offer calls a state of its row. */
export const stateText = (state: OfferState): Offer['state'] => stateTexts[state];

/** What an unsent revision says and looks like under the releases that it has: state, watermark, documents. */
export async function writeRevision(workshop: Workshop, draft: DraftRevision): Promise<WrittenRevision> {
  const { system, offer, assessment, blocking, released, author } = draft;
  const kinds = released.map(({ what }) => what);
  const left = standing(blocking, kinds);
  const state = waitsFor(blocking, kinds).length > 0 ? OfferState.in_review : OfferState.draft;
  const { watermark: _, ...open } = offer;
  const watermark = watermarkOf(left);
  const document: Offer = {
    ...open,
    state: stateText(state),
    ...(watermark === undefined ? {} : { watermark }),
  };
  const files = await workshop.run('render', {
    system,
    offer: document,
    assessment: { ...assessment, blocking: [...left], releasable: left.length === 0 },
    issue: {
      maker: workshop.catalogue.maker,
      author,
      ...(offer.date === undefined ? {} : { date: offer.date }),
      releases: released,
    },
  });
  return { document, state, files };
}

/** The rows that hold rendered documents. */
export const fileRows = (files: readonly RenderedFile[]) =>
  files.map(({ name, audience, mediaType, content }) => ({
    name,
    audience,
    mediaType,
    bytes: content.byteLength,
    content: new Uint8Array(content),
  }));
