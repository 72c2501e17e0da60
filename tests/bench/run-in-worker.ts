import { build } from 'esbuild';
import { chromium } from 'playwright-core';
import { findBrowser } from '../e2e/find-browser.js';

const bundles = new Map<string, Promise<string>>();

async function bundleOf(entry: string): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [entry],
    ...{ bundle: true, format: 'iife', minify: true, write: false, logLevel: 'error' },
  });
  return outputFiles[0]?.text ?? '';
}

/** Runs a script in a Web Worker of Chromium: it is sent a task, and answers with one message. */
export async function runInWorker<T>(entry: string, task: unknown): Promise<T> {
  const bundle = bundles.get(entry) ?? bundleOf(entry);
  bundles.set(entry, bundle);
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
      ([text, asked]) =>
        new Promise<T>((resolve, reject) => {
          const worker = new Worker(URL.createObjectURL(new Blob([text], { type: 'text/javascript' })));
          worker.onmessage = ({ data }: MessageEvent<T>) => {
            resolve(data);
          };
          worker.onerror = (event) => {
            reject(new Error(event.message));
          };
          worker.postMessage(asked);
        }),
      [script, task] as const,
    );
  } finally {
    await browser.close();
  }
}
