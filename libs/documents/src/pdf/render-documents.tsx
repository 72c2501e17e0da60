/** @jsxRuntime automatic */
import { Document, type DocumentProps, renderToBuffer } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { OfferView } from '../views/offer-view.js';
import type { SpecificationView } from '../views/specification-view.js';
import { ComplianceSheets } from './compliance-pages.js';
import { EvidenceSheets } from './evidence-pages.js';
import { loadFonts } from './fonts.js';
import { OfferSheets } from './offer-pages.js';
import { ConformitySheets, DrawingSheets } from './specification-pages.js';

/** Dates inside the file come from the document, so that the same offer gives the same bytes. */
const fixedDate = (iso: string | undefined): Date => new Date(`${iso ?? '2000-01-01'}T00:00:00Z`);

interface Meta {
  readonly title: string;
  readonly author: string;
  readonly date?: string | undefined;
}

const documentProps = ({ title, author, date }: Meta): DocumentProps => ({
  title,
  author,
  creator: 'Flangewise',
  producer: 'Flangewise',
  language: 'en-GB',
  creationDate: fixedDate(date),
  modificationDate: fixedDate(date),
});

const render = async (document: ReactElement<DocumentProps>): Promise<Buffer> => {
  await loadFonts();
  return renderToBuffer(document);
};

/** The offer letter as PDF. `date` is the calendar date that the file carries. */
export const renderOffer = (view: OfferView, date?: string): Promise<Buffer> =>
  render(
    <Document
      {...documentProps({ title: `Offer ${view.number}, ${view.title}`, author: view.block.owner, date })}
    >
      <OfferSheets view={view} />
    </Document>,
  );

/** The technical specification as PDF: drawing, compliance, conformity, evidence. */
export const renderSpecification = (view: SpecificationView, date?: string): Promise<Buffer> =>
  render(
    <Document
      {...documentProps({
        title: `Technical specification ${view.block.document}, ${view.block.title}`,
        author: view.block.owner,
        date,
      })}
    >
      <DrawingSheets view={view} />
      <ConformitySheets view={view} />
      <ComplianceSheets view={view} />
      <EvidenceSheets view={view} />
    </Document>,
  );
