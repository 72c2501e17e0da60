/** @jsxRuntime automatic */
import { Document, type DocumentProps, renderToBuffer } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { OfferView } from '../views/offer-view.js';
import type { RuleBookView } from '../views/rule-book-view.js';
import type { SpecificationView } from '../views/specification-view.js';
import { ComplianceSheets, complianceSheetCount } from './compliance-pages.js';
import { EvidenceSheets, evidenceSheetCount } from './evidence-pages.js';
import { loadFonts } from './fonts.js';
import { OfferSheets, offerSheetCount } from './offer-pages.js';
import { createPageCount, type PageCount, PageCountContext } from './page-count.js';
import { RuleBookSheets } from './rule-book-pages.js';
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

/**
 * The document as PDF. Sheets are numbered while they are painted; where there turn out to be more or fewer than
 * expected, it is painted once more with the true number.
 */
const render = async (meta: Meta, body: ReactElement, expected: number): Promise<Buffer> => {
  await loadFonts();
  const paintAll = (pages: PageCount): Promise<Buffer> =>
    renderToBuffer(
      <Document {...documentProps(meta)}>
        <PageCountContext.Provider value={pages}>{body}</PageCountContext.Provider>
      </Document>,
    );
  const first = createPageCount(expected);
  const painted = await paintAll(first);
  return first.painted() === expected ? painted : paintAll(createPageCount(first.painted()));
};

/** The offer letter as PDF. `date` is the calendar date that the file carries. */
export const renderOffer = (view: OfferView, date?: string): Promise<Buffer> =>
  render(
    { title: `Offer ${view.number}, ${view.title}`, author: view.block.owner, date },
    <OfferSheets view={view} />,
    offerSheetCount(view),
  );

const expectedSheets = (view: SpecificationView): number =>
  view.sheets.length + 1 + complianceSheetCount(view) + evidenceSheetCount(view);

/** The technical specification as PDF: drawing, compliance, conformity, evidence. */
export const renderSpecification = (view: SpecificationView, date?: string): Promise<Buffer> =>
  render(
    {
      title: `Technical specification ${view.block.document}, ${view.block.title}`,
      author: view.block.owner,
      date,
    },
    <>
      <DrawingSheets view={view} />
      <ConformitySheets view={view} />
      <ComplianceSheets view={view} />
      <EvidenceSheets view={view} />
    </>,
    expectedSheets(view),
  );

/** The book of rules as PDF; the same rules give the same bytes. */
export const renderRuleBook = async (view: RuleBookView): Promise<Buffer> => {
  await loadFonts();
  return renderToBuffer(
    <Document {...documentProps({ title: `Rule book, rules ${view.revision}`, author: view.maker })}>
      <RuleBookSheets view={view} />
    </Document>,
  );
};
