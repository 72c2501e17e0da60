import type { Assessment, Item, Offer, System } from '@flangewise/model';
import type { DrawingInput } from './drawings/drawing-model.js';
import { drawingModelOf } from './drawings/drawing-model-of.js';
import type { OfferDocumentsView } from './render-offer-documents.js';
import { billViewOf } from './views/bill-view.js';
import type { InputFields } from './views/input-text.js';
import type { Issue } from './views/issue.js';
import { offerViewOf } from './views/offer-view.js';
import { specificationViewOf } from './views/specification-view.js';

export interface OfferedSystem {
  readonly system: System;
  readonly items: ReadonlyMap<string, Item>;
  readonly offer: Offer;
  /** With evidence whose sources are named, and with everything that keeps the offer from going out. */
  readonly assessment: Assessment;
  readonly drawn: DrawingInput;
  readonly issue: Issue;
  /** What the inputs in the evidence are. */
  readonly inputFields: InputFields;
}

/** What all documents of one offer show. */
export const offerDocumentsViewOf = (offered: OfferedSystem): OfferDocumentsView => {
  const { system, items, offer, assessment, drawn, issue, inputFields } = offered;
  const drawing = drawingModelOf(drawn);
  return {
    offer: offerViewOf({ system, items, offer, issue, blocking: assessment.blocking }),
    specification: specificationViewOf({ system, items, assessment, offer, drawing, issue, inputFields }),
    bill: billViewOf(offer, system, items),
    date: offer.date,
  };
};
