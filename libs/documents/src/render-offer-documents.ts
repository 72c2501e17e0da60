import { renderOffer, renderSpecification } from './pdf/render-documents.js';
import { coverSvg } from './cover-svg.js';
import { sectionSvg } from './section-svg.js';
import { billCsv } from './tables/bill-csv.js';
import { billXlsx } from './tables/bill-xlsx.js';
import type { BillView } from './views/bill-view.js';
import type { OfferView } from './views/offer-view.js';
import type { SpecificationView } from './views/specification-view.js';

/** Everything that goes out with an offer. */
export interface OfferDocumentsView {
  readonly offer: OfferView;
  readonly specification: SpecificationView;
  readonly bill: BillView;
  /** Calendar date that the files carry, `2026-11-24`. */
  readonly date?: string | undefined;
}

export interface OfferDocument {
  readonly name: string;
  readonly mediaType: string;
  readonly bytes: Uint8Array;
}

const text = (content: string): Uint8Array => new TextEncoder().encode(content);

/** The files of an offer; the same view gives the same bytes. Drawings are left out while nobody has chosen a vessel or a cover. */
export const renderOfferDocuments = async (view: OfferDocumentsView): Promise<OfferDocument[]> => {
  const letter = await renderOffer(view.offer, view.date);
  const specification = await renderSpecification(view.specification, view.date);
  const workbook = await billXlsx(view.bill);
  const { drawing, numbers } = view.specification;
  const drawings = { 'section.svg': sectionSvg(drawing, numbers), 'cover.svg': coverSvg(drawing, numbers) };
  return [
    { name: 'offer.pdf', mediaType: 'application/pdf', bytes: letter },
    { name: 'specification.pdf', mediaType: 'application/pdf', bytes: specification },
    { name: 'bill-of-materials.csv', mediaType: 'text/csv; charset=utf-8', bytes: text(billCsv(view.bill)) },
    {
      name: 'bill-of-materials.xlsx',
      mediaType: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
      bytes: workbook,
    },
    ...Object.entries(drawings).flatMap(([name, svg]) =>
      svg === undefined ? [] : [{ name, mediaType: 'image/svg+xml', bytes: text(svg) }],
    ),
  ];
};
