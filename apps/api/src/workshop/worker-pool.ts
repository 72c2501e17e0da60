import { availableParallelism } from 'node:os';
import { Piscina } from 'piscina';
import { refuse } from '../errors/refusal.js';
import type { Jobs, RunJob } from './jobs.js';

export interface WorkerPool {
  readonly run: RunJob;
  readonly close: () => Promise<void>;
}

/** One processor stays with the requests; each thread keeps tables of its own, so there are few. */
const mostThreads = 4;
/** A job that takes longer is stopped, and its thread with it [s]. */
const jobLimitSeconds = 90;
/** The same of those that go through a whole catalogue, however large. */
const catalogueLimitSeconds = 300;
const overWholeCatalogues: readonly (keyof Jobs)[] = ['audit', 'check', 'compare', 'readFile', 'writeFile'];
const mostWaiting = 64;
/** A thread that needs more is stopped; the API goes on [MiB]. */
const memoryLimitMebibyte = 2048;

/**
 * Does jobs in threads of their own, so that nobody else waits for them.
 *
 * @param file the module that exports the jobs by name, `worker.ts` as it is built
 */
export function createWorkerPool(file: string): WorkerPool {
  const pool = new Piscina({
    filename: file,
    minThreads: 1,
    maxThreads: Math.min(mostThreads, Math.max(1, availableParallelism() - 1)),
    idleTimeout: Number.POSITIVE_INFINITY,
    maxQueue: mostWaiting,
    resourceLimits: { maxOldGenerationSizeMb: memoryLimitMebibyte },
  });
  return {
    run: async (job, order, given) => {
      const seconds = overWholeCatalogues.includes(job) ? catalogueLimitSeconds : jobLimitSeconds;
      const limit = AbortSignal.timeout(seconds * 1000);
      const signal = given === undefined ? limit : AbortSignal.any([limit, given]);
      if (pool.queueSize >= mostWaiting) throw refuse('TOO_BUSY', { waiting: pool.queueSize });
      try {
        const answer: unknown = await pool.run(order, { name: job, signal });
        return answer as Jobs[typeof job]['answer'];
      } catch (error) {
        if (limit.aborted) throw refuse('TOOK_TOO_LONG', { seconds });
        if (signal.aborted) throw refuse('GIVEN_UP', {});
        throw error;
      }
    },
    close: () => pool.close({ force: true }),
  };
}
