import { currentRevision, loadCatalogue, revisionIdOf } from '../catalogue/load-catalogue.js';
import type { Database } from '../database/client.js';
import type { RunJob } from './jobs.js';
import { keepLast } from './keep-last.js';
import { createWorkshop, type Workshop } from './workshop.js';

export interface Workshops {
  /** Over the catalogue in force: asked of the database each time, since any process may have released another. */
  current(): Promise<Workshop>;
  /** Over the released catalogue of this name, in force or not. */
  named(revision: string): Promise<Workshop>;
  /** Asks for a job over any catalogue. */
  readonly runJob: RunJob;
}

/** The one in force, the one before it while requests end, and one that somebody looks back at. */
const mostWorkshops = 3;

export function createWorkshops(database: Database, runJob: RunJob): Workshops {
  const opened = keepLast<Promise<Workshop>>(mostWorkshops);
  const open = (id: string): Promise<Workshop> =>
    opened.get(id, async () => {
      try {
        return createWorkshop(await loadCatalogue(database, id), runJob);
      } catch (error) {
        opened.forget(id);
        throw error;
      }
    });
  return {
    current: async () => open((await currentRevision(database)).id),
    named: async (revision) => open(await revisionIdOf(database, revision)),
    runJob,
  };
}
