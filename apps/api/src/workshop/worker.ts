import { createWorkers } from './workers.js';

// One thread of the pool: it keeps its tables between questions.

export const { solve, narrow, explain, render, audit, check, compare, readFile, writeFile, ruleBook } =
  createWorkers();
