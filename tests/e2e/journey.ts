import type { Locator, Page } from 'playwright-core';
import { inquiryFile } from './api.js';

/** The way of an engineer or a customer through the pages, one function a step. */

export const importButton = (page: Page): Locator => page.getByLabel('choose a file');

/** Opens an empty inquiry from the list of inquiries. */
export async function openNewInquiry(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'New inquiry' }).first().click();
  await page.getByRole('heading', { name: 'New inquiry', level: 1 }).waitFor();
}

/** Reads an inquiry of the acceptance tests into the form. */
export async function importInquiry(page: Page, name: string): Promise<void> {
  await importButton(page).setInputFiles(inquiryFile(name));
  await page.getByText('The fields below show the file').waitFor();
}

/** What a procedure of the API answers to the next request of the page. */
export async function answerTo<T>(page: Page, procedure: string, act: () => Promise<unknown>): Promise<T> {
  const [answer] = await Promise.all([
    page.waitForResponse(
      (one) =>
        new URL(one.url()).pathname === `/api/trpc/${procedure}` && one.request().method() !== 'OPTIONS',
    ),
    act(),
  ]);
  const { result } = (await answer.json()) as { readonly result?: { readonly data: T } };
  if (result === undefined)
    throw new Error(`${procedure} was to succeed; it answered ${answer.status()}: ${await answer.text()}`);
  return result.data;
}

/** Saves what stands in the form and looks for systems; returns the answer of the search. */
export async function findSystems<T>(page: Page): Promise<T> {
  const answer = await answerTo<T>(page, 'systems.solve', () =>
    page.getByRole('button', { name: 'Find systems' }).first().click(),
  );
  await page.waitForURL(/\/inquiries\/[\w-]+\/candidates$/);
  return answer;
}

export const candidateRow = (page: Page, name: string): Locator =>
  page
    .getByRole('table', { name: 'Systems that fit, ranked' })
    .getByRole('row', { name: new RegExp(`^${name}\\b`) });

/** Takes a candidate and waits until its checks stand on the page. */
export async function takeCandidate(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name: new RegExp(`^Take ${name},`) }).click();
  await page.waitForURL(/\/systems\/[\w-]+$/);
  await waitForChecks(page);
}

export async function waitForChecks(page: Page): Promise<void> {
  await page.getByRole('heading', { name: 'Checks, not met and open first' }).waitFor();
}

/** Drafts the offer of the system on the page, and waits until it stands there. */
export async function makeOffer(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Draft offer' }).first().click();
  await answerTo(page, 'offers.create', () => page.getByRole('button', { name: 'Make the offer' }).click());
  await page.waitForURL(/\/offers\/[\w-]+$/);
  await page.getByRole('table', { name: 'Positions' }).waitFor();
}

/** The id at the end of the address, of an inquiry, a system or an offer. */
export function idInAddress(page: Page, kind: 'inquiries' | 'systems' | 'offers'): string {
  const { pathname } = new URL(page.url());
  const id = new RegExp(`^/${kind}/([\\w-]+)`).exec(pathname)?.[1];
  if (id === undefined) throw new Error(`the address was to be of one of the ${kind}; it is ${pathname}`);
  return id;
}
