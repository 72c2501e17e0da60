import type { RunJob, Workers } from './jobs.js';

/** Does every job at once in this thread; whoever else asks waits. */
export const runHere =
  (workers: Workers): RunJob =>
  async (job, order) =>
    workers[job](order);
