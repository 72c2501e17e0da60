import 'vitest';
import type { TestProject } from 'vitest/node';
import { startThrowawayServer } from './throwaway-server.js';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Connection string of a server on which a test makes databases of its own. */
    databaseServer: string;
  }
}

/** One PostgreSQL server for all tests of the package. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const server = await startThrowawayServer();
  project.provide('databaseServer', server.url('postgres'));
  return server.remove;
}
