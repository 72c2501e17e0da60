export { renderOffer, renderSpecification } from './pdf/render-documents.js';
export { type BillRow, type BillView, billViewOf } from './views/bill-view.js';
export type { CheckRow } from './views/check-rows.js';
export type { EvidenceSheet } from './views/evidence-sheets.js';
export type { Issue, Row, TitleBlockView } from './views/issue.js';
export { type OfferOption, type OfferView, offerViewOf, type OfferViewInput } from './views/offer-view.js';
export {
  type SpecificationInput,
  type SpecificationView,
  specificationViewOf,
} from './views/specification-view.js';
