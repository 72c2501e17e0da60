export { renderOffer, renderRuleBook } from './pdf/render-documents.js';
export { type BillRow, type BillView, billViewOf } from './views/bill-view.js';
export type { CheckRow } from './views/check-rows.js';
export type { EvidenceSheet } from './views/evidence-sheets.js';
export type { Issue, Row, TitleBlockView } from './views/issue.js';
export type { OfferOption, OfferView } from './views/offer-view.js';
export type { SpecificationView } from './views/specification-view.js';
export { billCsv } from './tables/bill-csv.js';
export { type OfferedSystem, offerDocumentsViewOf } from './offer-documents-view-of.js';
export {
  type OfferDocument,
  type OfferDocumentsView,
  renderOfferDocuments,
} from './render-offer-documents.js';
export { type RuleBookInput, type RuleBookView, ruleBookViewOf } from './views/rule-book-view.js';
export { coverSvg } from './cover-svg.js';
export { sectionSvg } from './section-svg.js';
export type { FigureView } from './views/figures.js';
