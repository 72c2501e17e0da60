import { runHere } from './run-here.js';
import { currentStock, type Stock } from './stock.js';
import { createWorkers } from './workers.js';
import { createWorkshop, type Workshop } from './workshop.js';

let shared: Workshop | undefined;

const workshopOf = (stock: Stock): Workshop => createWorkshop(stock, runHere(createWorkers(stock)));

/** A workshop that does its jobs in the thread of the test; that of the stock in force is shared, for its tables. */
export const testWorkshop = (stock?: Stock): Workshop =>
  stock === undefined ? (shared ??= workshopOf(currentStock)) : workshopOf(stock);
