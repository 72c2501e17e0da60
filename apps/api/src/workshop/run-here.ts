import type { Workers } from './jobs.js';
import type { RunJob } from './workshop.js';

/** Does every job at once in this thread; whoever else asks waits. */
export const runHere =
  (workers: Workers): RunJob =>
  async (job, question) =>
    workers[job](question);
