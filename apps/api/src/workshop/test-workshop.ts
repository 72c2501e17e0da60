import { benchOf, drawingFactsOf } from '@flangewise/constraints';
import { billCsv, billViewOf, sectionSvg } from '@flangewise/documents';
import { drawingModelOf } from '@flangewise/documents/drawings';
import { Audience } from '../generated/enums.js';
import type { Workers } from './jobs.js';
import { readSystem } from './read-system.js';
import { runHere } from './run-here.js';
import { currentStock, type Stock } from './stock.js';
import { createWorkers } from './workers.js';
import { createWorkshop, type Workshop } from './workshop.js';

const workshopOf = (stock: Stock, workers = createWorkers(stock)): Workshop =>
  createWorkshop(stock, runHere(workers));

let shared: Workshop | undefined;

/** A workshop that does its jobs in the thread of the test; that of the stock in force is shared, for its tables. */
export const testWorkshop = (stock?: Stock): Workshop =>
  stock === undefined ? (shared ??= workshopOf(currentStock)) : workshopOf(stock);

/** Of the documents of an offer the two that are made in no time; letter and specification take a second or two. */
const quickDocuments: Workers['render'] = (question) => {
  const { bench } = testWorkshop();
  const { offer, assessment } = question;
  const system = readSystem(question.system);
  const { range } = benchOf(system, bench);
  const facts = drawingFactsOf(system, range, assessment);
  const bill = billCsv(billViewOf(offer, system, range.items));
  const section = sectionSvg(drawingModelOf(facts)) ?? '';
  return Object.values(Audience).flatMap((audience) => [
    { name: 'bill-of-materials.csv', audience, mediaType: 'text/csv', content: Buffer.from(bill) },
    { name: 'section.svg', audience, mediaType: 'image/svg+xml', content: Buffer.from(section) },
  ]);
};

let quick: Workshop | undefined;

/** For tests that make many offers and ask for other things than their paper. */
export const quickWorkshop = (): Workshop =>
  (quick ??= workshopOf(currentStock, { ...createWorkers(currentStock), render: quickDocuments }));
