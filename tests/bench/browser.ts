/**
 * What a person waits for in the browser, goal beside value: `npm run bench:browser`.
 * Starts a product of its own with a new data folder. The cores may be noisy: compare only what one run printed.
 */
import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { InquiryInput } from '@flangewise/model';
import { type Browser, chromium, type Page } from 'playwright-core';
import { removeDataFolder } from '../../apps/api/src/embedded-database/folder.js';
import { findBrowser } from '../e2e/find-browser.js';
import { startProduct } from '../e2e/start-product.js';
import { type Measured, measured, tableOf } from './measure.js';
import type { NarrowTimes } from './narrow-worker.js';
import { runInWorker } from './run-in-worker.js';

const edits = 40;
const visits = 5;
const letters = 5;

const inquiries = [
  '01-hydrogenation-completed',
  '05-pilot-toluene-completed',
  '08-glass-and-steel-completed',
];

const read = (name: string): InquiryInput =>
  JSON.parse(
    readFileSync(join(import.meta.dirname, '..', 'acceptance', 'inquiries', `${name}.json`), 'utf8'),
  ) as InquiryInput;

const inquiry = read('01-hydrogenation-completed');

/** Asks the API from within the page, as whoever is signed in there. */
const ask = <T>(page: Page, path: string, input: unknown): Promise<T> =>
  page.evaluate(
    async ([to, body]) => {
      const isQuery = to === 'systems.solve';
      const answer = isQuery
        ? await fetch(`/api/trpc/${to}?input=${encodeURIComponent(JSON.stringify(body))}`)
        : await fetch(`/api/trpc/${to}`, {
            method: 'POST',
            headers: { 'content-type': 'application/json' },
            body: JSON.stringify(body),
          });
      return ((await answer.json()) as { result: { data: T } }).result.data;
    },
    [path, input] as const,
  );

const since = async (act: () => Promise<unknown>): Promise<number> => {
  const start = performance.now();
  await act();
  return performance.now() - start;
};

/** Sign-in until the list of inquiries can be used, each in a browser profile of its own. */
async function signInTime(browser: Browser, address: string, password: string): Promise<[number, Page]> {
  const context = await browser.newContext({ baseURL: address, viewport: { width: 1440, height: 900 } });
  const page = await context.newPage();
  await page.goto('/sign-in');
  await page.getByLabel('E-mail address').fill('engineer@averholt.example');
  await page.getByLabel('Password').fill(password);
  const time = await since(async () => {
    await page.getByRole('button', { name: 'Sign in' }).click();
    await page.getByRole('link', { name: 'New inquiry' }).first().waitFor();
  });
  return [time, page];
}

const candidatesTime = (page: Page, inquiryId: string): Promise<number> =>
  since(async () => {
    await page.goto(`/inquiries/${inquiryId}/candidates`);
    await page.getByRole('button', { name: /^Take A,/ }).click({ trial: true });
  });

interface Edit {
  /** From the click until every slot shows in a frame what fits. */
  readonly shownMs: number;
  /** Of that, until the answers of the engine were there. */
  readonly answeredMs: number;
}

/** Takes the next option of the open slot and waits for the frame in which all slots are narrowed again. */
const editOnce = (page: Page): Promise<Edit> =>
  page.evaluate(async () => {
    const radios = [...document.querySelectorAll<HTMLInputElement>('input[type=radio]')];
    const at = radios.findIndex(({ checked }) => checked);
    performance.clearMeasures('flangewise.narrowed');
    const start = performance.now();
    radios[(at + 1) % radios.length]?.click();
    do await new Promise(requestAnimationFrame);
    while (
      [...document.querySelectorAll('[aria-label="Slots of the system"] li')].some(
        (line) => !/ fit/.test(line.textContent),
      )
    );
    const shownMs = performance.now() - start;
    const [answer] = performance.getEntriesByName('flangewise.narrowed');
    return {
      shownMs,
      answeredMs: answer === undefined ? Number.NaN : answer.startTime + answer.duration - start,
    };
  });

async function editTimes(page: Page, systemId: string): Promise<readonly Edit[]> {
  await page.goto(`/systems/${systemId}`);
  await page.getByRole('heading', { name: 'Checks, not met and open first' }).waitFor();
  await page.getByRole('button', { name: 'list' }).click();
  const times: Edit[] = [];
  const slots = ['Coupling', 'Pressure gauge', 'Thermowell', 'Vent line'];
  for (let run = 0; run < edits + slots.length; run++) {
    const slot = slots[run % slots.length] ?? '';
    await page
      .getByRole('list', { name: 'Slots of the system' })
      .getByRole('button', { name: new RegExp(`^(\\d+ )?${slot} `) })
      .click();
    await page.getByRole('region', { name: slot }).getByRole('radio').first().waitFor();
    times.push(await editOnce(page));
  }
  // The first edit of each slot compiles and fills caches.
  return times.slice(slots.length);
}

interface Letter {
  readonly offerMs: number;
  readonly specificationMs: number;
}

/** From the click until the offer is on the page and the letter, then the specification, is here. */
async function letterTimes(page: Page, systemId: string): Promise<Letter> {
  await page.goto(`/systems/${systemId}/offer`);
  const make = page.getByRole('button', { name: 'Make the offer' });
  await make.waitFor();
  const start = performance.now();
  await make.click();
  await page.waitForURL(/\/offers\/[\w-]+$/);
  const fetched = async (name: string): Promise<number> => {
    const { pathname } = new URL(page.url());
    const answer = await page.request.get(`/api${pathname}/documents/${name}`);
    if (!(await answer.body()).subarray(0, 5).equals(Buffer.from('%PDF-')))
      throw new Error(`${name} is no PDF`);
    return performance.now() - start;
  };
  return { offerMs: await fetched('offer.pdf'), specificationMs: await fetched('specification.pdf') };
}

const data = mkdtempSync(join(tmpdir(), 'flangewise-bench-'));
const product = startProduct({ FLANGEWISE_DATA: data });
const browser = await chromium.launch({ executablePath: await findBrowser() });
try {
  const { address, password = '' } = await product.announced;
  const signIns: number[] = [];
  const firstVisits: number[] = [];
  const laterVisits: number[] = [];
  let page: Page | undefined;
  let inquiryId = '';
  for (let run = 0; run < visits; run++) {
    const [time, opened] = await signInTime(browser, address, password);
    page = opened;
    if (run === 0)
      inquiryId = (await ask<{ id: string }>(page, 'inquiries.create', { document: inquiry })).id;
    else signIns.push(time);
    firstVisits.push(await candidatesTime(page, inquiryId));
    laterVisits.push(await candidatesTime(page, inquiryId));
  }
  if (page === undefined) throw new Error('no page was opened');
  const { candidates } = await ask<{ candidates: { system: unknown }[] }>(page, 'systems.solve', {
    inquiryId,
  });
  const system = candidates[0]?.system;
  const { id: systemId } = await ask<{ id: string }>(page, 'systems.create', { inquiryId, system });
  const edited = await editTimes(page, systemId);
  const lettered: Letter[] = [];
  for (let run = 0; run < letters; run++) lettered.push(await letterTimes(page, systemId));
  const rows: readonly Measured[] = [
    measured('list of inquiries after sign-in, new profile', 2000, signIns),
    measured('candidates to be taken, new profile', 2000, firstVisits),
    measured('candidates to be taken, page loaded again', 2000, laterVisits),
    measured(
      'edit until every slot shows what fits',
      50,
      edited.map(({ shownMs }) => shownMs),
    ),
    measured(
      '  of that until the engine has answered',
      50,
      edited.map(({ answeredMs }) => answeredMs),
    ),
    measured(
      'offer made until its letter is here',
      2000,
      lettered.map(({ offerMs }) => offerMs),
    ),
    measured(
      'offer made until both PDFs are here',
      2000,
      lettered.map(({ specificationMs }) => specificationMs),
    ),
  ];
  const narrowed: Measured[] = [];
  for (const name of inquiries) {
    const worker = join(import.meta.dirname, 'narrow-worker.ts');
    const { items, edits: times } = await runInWorker<NarrowTimes>(worker, read(name));
    narrowed.push(measured(`narrow in a Web Worker, ${String(items)} items, ${name}`, 16, times));
  }
  process.stdout.write(`${tableOf([...rows, ...narrowed])}\n`);
} finally {
  await browser.close();
  await product.stop();
  removeDataFolder(data);
}
