import { createContext } from 'react';

/** Counts the sheets of a document while they are painted, one after another. */
export interface PageCount {
  /** How many sheets the document is taken to have. */
  readonly total: number;
  /** The number of the sheet that is being painted, from 1. */
  readonly next: () => number;
  readonly painted: () => number;
}

export const createPageCount = (total: number): PageCount => {
  let count = 0;
  return { total, next: () => (count += 1), painted: () => count };
};

/** The count of the document around. */
export const PageCountContext = createContext<PageCount>(createPageCount(0));
