import { benchOf, drawingFactsOf } from '@flangewise/constraints';
import { billCsv, billViewOf, sectionSvg } from '@flangewise/documents';
import { drawingModelOf } from '@flangewise/documents/drawings';
import { unpackCatalogue } from '../catalogue/packed-catalogue.js';
import { Audience } from '../generated/enums.js';
import { type Benches, createBenches } from './benches.js';
import type { Workers } from './jobs.js';
import { keepLast } from './keep-last.js';
import { readSystem } from './read-system.js';
import { createWorkers } from './workers.js';

const opened = keepLast<Benches>(1);

/** Of the documents of an offer the two that are made in no time; letter and specification take a second or two. */
const quickDocuments: Workers['render'] = ({ over, question }) => {
  const { unpriced } = opened.get(over.key, () => createBenches(unpackCatalogue(over)));
  const { offer, assessment } = question;
  const system = readSystem(question.system);
  const { range } = benchOf(system, unpriced);
  const facts = drawingFactsOf(system, range, assessment);
  const bill = billCsv(billViewOf(offer, system, range.items));
  const section = sectionSvg(drawingModelOf(facts)) ?? '';
  return Object.values(Audience).flatMap((audience) => [
    { name: 'bill-of-materials.csv', audience, mediaType: 'text/csv', content: Buffer.from(bill) },
    { name: 'section.svg', audience, mediaType: 'image/svg+xml', content: Buffer.from(section) },
  ]);
};

/** For tests that make many offers and ask for other things than their paper. */
export const quickWorkers = (): Workers => ({ ...createWorkers(), render: quickDocuments });
