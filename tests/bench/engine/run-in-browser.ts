import { join } from 'node:path';
import { runInWorker } from '../run-in-worker.js';
import type { EngineRun, Instance, Limits } from './engine-run.js';

/** Runs the engine on one instance in a Web Worker of Chromium. */
export const runInBrowser = (instance: Instance, limits: Limits): Promise<EngineRun> =>
  runInWorker(join(import.meta.dirname, 'browser-worker.ts'), { instance, limits });
