import { availableParallelism } from 'node:os';
import { Piscina } from 'piscina';
import { refuse } from '../errors/refusal.js';
import type { Jobs } from './jobs.js';
import type { RunJob } from './workshop.js';

export interface WorkerPool {
  readonly run: RunJob;
  readonly close: () => Promise<void>;
}

/** One processor stays with the requests; each thread keeps tables of its own, so there are few. */
const mostThreads = 4;
/** A job that takes longer is stopped, and its thread with it [s]. */
const jobLimitSeconds = 90;
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
    run: async (job, question) => {
      const limit = AbortSignal.timeout(jobLimitSeconds * 1000);
      if (pool.queueSize >= mostWaiting) throw refuse('TOO_BUSY', { waiting: pool.queueSize });
      try {
        const answer: unknown = await pool.run(question, { name: job, signal: limit });
        return answer as Jobs[typeof job]['answer'];
      } catch (error) {
        if (limit.aborted) throw refuse('TOOK_TOO_LONG', { seconds: jobLimitSeconds });
        throw error;
      }
    },
    close: () => pool.close({ force: true }),
  };
}
