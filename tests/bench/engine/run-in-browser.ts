import { join } from 'node:path';
import { build } from 'esbuild';
import { chromium } from 'playwright-core';
import { findBrowser } from '../../e2e/find-browser.js';
import type { EngineRun, Instance, Limits } from './engine-run.js';

let bundle: Promise<string> | null = null;

async function bundleWorker(): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [join(import.meta.dirname, 'browser-worker.ts')],
    ...{ bundle: true, format: 'iife', minify: true, write: false, logLevel: 'error' },
  });
  return outputFiles[0]?.text ?? '';
}

/** Runs the engine on one instance in a Web Worker of Chromium. */
export async function runInBrowser(instance: Instance, limits: Limits): Promise<EngineRun> {
  bundle ??= bundleWorker();
  const script = await bundle;
  const asRoot = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
  const browser = await chromium.launch({
    executablePath: await findBrowser(),
    args: [
      ...asRoot,
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--no-first-run',
    ],
  });
  try {
    const page = await browser.newPage();
    return await page.evaluate(
      ([text, task]) =>
        new Promise<EngineRun>((resolve, reject) => {
          const worker = new Worker(URL.createObjectURL(new Blob([text], { type: 'text/javascript' })));
          worker.onmessage = ({ data }: MessageEvent<EngineRun>) => {
            resolve(data);
          };
          worker.onerror = (event) => {
            reject(new Error(event.message));
          };
          worker.postMessage(task);
        }),
      [script, { instance, limits }] as const,
    );
  } finally {
    await browser.close();
  }
}
