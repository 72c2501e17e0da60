import 'vitest';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { removeDataFolder } from '../../apps/api/src/embedded-database/folder.js';
import { findBrowser } from './find-browser.js';
import { startProduct } from './start-product.js';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Address of the running product. */
    address: string;
    /** Password of all people of the demo. */
    password: string;
    /** The Chromium to run. */
    browser: string;
  }
}

/** One product on free ports with a data folder of its own, and a browser, for all tests in the browser. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const browser = await findBrowser();
  const data = mkdtempSync(join(tmpdir(), 'flangewise-e2e-'));
  const product = startProduct({ FLANGEWISE_DATA: data });
  const { address, password } = await product.announced;
  if (password === undefined) throw new Error('a new data folder has to know the password of its demo');
  project.provide('browser', browser);
  project.provide('address', address);
  project.provide('password', password);
  return async () => {
    await product.stop();
    removeDataFolder(data);
  };
}
