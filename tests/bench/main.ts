/**
 * Speeds of the main job on this machine, goal beside value: `npm run bench`.
 * The two cores may be noisy: compare only what one run printed.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pricedDemoCatalogue } from '@flangewise/catalogue/prices';
import { assess, benchOf, createBench, narrow, rangeOf, ruleBook, solve } from '@flangewise/constraints';
import { type InquiryInput, readDocument, type System, systemSchema } from '@flangewise/model';
import { additivePrices, deliveryDaysOf } from '@flangewise/quotation';
import { reopened } from './edits.js';
import { type Measured, measure, tableOf } from './measure.js';

const inquiries = [
  '01-hydrogenation-completed',
  '05-pilot-toluene-completed',
  '08-glass-and-steel-completed',
];

const prices = additivePrices(pricedDemoCatalogue, '2026-11-EUR');
if (!prices.ok) throw new Error(prices.error.message);
const range = rangeOf(pricedDemoCatalogue, { prices: prices.value, deliveryDays: deliveryDaysOf });
const bench = createBench(range, ruleBook);

const read = (name: string): InquiryInput =>
  JSON.parse(
    readFileSync(join(import.meta.dirname, '..', 'acceptance', 'inquiries', `${name}.json`), 'utf8'),
  ) as InquiryInput;

const firstSystem = (inquiry: InquiryInput): System => {
  const [candidate] = solve(inquiry, bench).candidates;
  const system = readDocument(systemSchema, candidate?.system);
  if (!system.ok) throw new Error(JSON.stringify(system.error));
  return system.value;
};

const rows: Measured[] = [];
for (const name of inquiries) {
  const inquiry = read(name);
  const system = firstSystem(inquiry);
  const own = benchOf(system, bench);
  rows.push(
    await measure(`assessment of a system, ${name}`, 10, { runs: 60, task: () => assess(system, own) }),
    await measure(`narrow after an edit, ${name}`, 50, {
      runs: 60,
      task: (run) => narrow(reopened(system, run), own),
    }),
    await measure(`solve, ${name}`, 1000, { runs: 7, task: () => solve(inquiry, bench) }),
    await measure(`solve, tables built anew, ${name}`, 1000, {
      runs: 5,
      task: () => solve(inquiry, createBench(range, ruleBook)),
    }),
  );
}
process.stdout.write(`${tableOf(rows)}\n`);
