import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { type Api, apiOf, readInquiry, saveJob } from './api.js';
import { candidateRow, waitForChecks } from './journey.js';
import { openPage, signIn } from './page.js';
import { step } from './step.js';
import { openSlot, showList, showUnfit } from './workspace.js';

/** Callouts of a drawing cut long names short where their label tells them whole. */
const isCutShort = (rule: string, html: string): boolean =>
  rule === 'label-content-name-mismatch' && html.startsWith('<a class="call');

/** What keeps people from using the page, by the rules of WCAG 2 that a program can check. */
async function violationsOn(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe.source);
  const { violations: found } = await page.evaluate(async () => {
    const checker = (window as unknown as { readonly axe: typeof axe }).axe;
    return checker.run(document, { resultTypes: ['violations'] });
  });
  return found
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, help, nodes }) =>
      nodes
        .filter(({ html }) => !isCutShort(id, html))
        .map(
          ({ target, html, failureSummary }) =>
            `${id}: ${help}; ${target.join(' ')}; ${html.slice(0, 160)}; ${failureSummary ?? ''}`,
        ),
    );
}

interface Job {
  readonly inquiryId: string;
  readonly systemId: string;
  readonly offerId: string;
  readonly impossibleId: string;
}

async function prepare(api: Api): Promise<Job> {
  const job = await saveJob(api, readInquiry('01-hydrogenation'));
  const { id: offerId } = await api.offers.create.mutate({ systemId: job.systemId, date: '2026-11-24' });
  const { id: impossibleId } = await api.inquiries.create.mutate({
    document: readInquiry('07-glass-16-bar'),
  });
  return { ...job, offerId, impossibleId };
}

/** Every page, and how it is brought into the state that is looked at. */
const states: readonly (readonly [title: string, open: (page: Page, job: Job) => Promise<unknown>])[] = [
  ['list of inquiries', (page) => page.goto('/').then(() => page.getByRole('table').waitFor())],
  [
    'menu of the person',
    async (page) => {
      await page.getByRole('button', { name: 'account and appearance' }).click();
      await page.getByRole('menu').waitFor();
    },
  ],
  [
    'new inquiry with refused fields',
    async (page) => {
      await page.goto('/inquiries/new');
      await page.getByLabel('Liquid in the vessel').fill('1.5 kg');
      await page.getByRole('button', { name: 'Find systems' }).first().click();
      await page.getByRole('alert').filter({ hasText: 'cannot be used' }).waitFor();
    },
  ],
  [
    'inquiry',
    async (page, { inquiryId }) => {
      await page.goto(`/inquiries/${inquiryId}`);
      await page.getByRole('heading', { name: 'Still open' }).waitFor();
    },
  ],
  [
    'candidates',
    async (page, { inquiryId }) => {
      await page.goto(`/inquiries/${inquiryId}/candidates`);
      await candidateRow(page, 'A').waitFor();
    },
  ],
  [
    'no candidate',
    async (page, { impossibleId }) => {
      await page.goto(`/inquiries/${impossibleId}/candidates`);
      await page.getByRole('heading', { name: /exclude each other$/ }).waitFor();
    },
  ],
  [
    'system as a drawing',
    async (page, { systemId }) => {
      await page.goto(`/systems/${systemId}`);
      await waitForChecks(page);
      await page.getByRole('radio').first().waitFor();
    },
  ],
  [
    'system as a list, with what does not fit',
    async (page) => {
      await showList(page);
      await openSlot(page, 'Pressure gauge');
      await showUnfit(page);
      await page
        .getByRole('button', { name: /^Why not / })
        .first()
        .click();
      await page.getByRole('button', { name: 'Take it all the same' }).waitFor();
    },
  ],
  [
    'system in conflict',
    async (page) => {
      await page.getByRole('button', { name: 'Take it all the same' }).click();
      await page.getByRole('heading', { name: 'These choices exclude each other' }).waitFor();
    },
  ],
  [
    'evidence of a check',
    async (page) => {
      await page.getByRole('button', { name: /Hot batch leaves room in the vessel/ }).click();
      await page.getByRole('dialog').getByRole('table').first().waitFor();
    },
  ],
  [
    'new offer',
    async (page, { systemId }) => {
      await page.goto(`/systems/${systemId}/offer`);
      await page.getByRole('button', { name: 'Make the offer' }).waitFor();
    },
  ],
  [
    'offer',
    async (page, { offerId }) => {
      await page.goto(`/offers/${offerId}`);
      await page.getByRole('table', { name: 'Positions' }).waitFor();
    },
  ],
];

/** Shows the page as people see it who chose dark pages, or light ones. */
const show = (page: Page, theme: 'light' | 'dark'): Promise<unknown> =>
  page.evaluate((chosen) => Object.assign(document.documentElement.dataset, { theme: chosen }), theme);

it('keeps nobody out, with light pages and with dark ones', async () => {
  const page = await openPage({ path: '/sign-in' });
  const found: Record<string, readonly string[]> = {};
  const look = async (title: string): Promise<void> => {
    for (const theme of ['dark', 'light'] as const) {
      await show(page, theme);
      found[`${title}, ${theme}`] = await violationsOn(page);
    }
  };
  await look('sign-in');
  await signIn(page, 'engineer');
  const job = await prepare(await apiOf(page));
  for (const [title, open] of states) {
    await step(`open ${title}`, () => open(page, job));
    await look(title);
  }
  expect(Object.fromEntries(Object.entries(found).filter(([, list]) => list.length > 0))).toEqual({});
});

it('follows the computer, and the person who chooses otherwise', async () => {
  const page = await openPage({ path: '/sign-in', colorScheme: 'dark' });
  const theme = (): Promise<string | undefined> =>
    page.evaluate(() => document.documentElement.dataset['theme']);
  expect(await theme()).toBe('dark');
  await signIn(page, 'engineer');
  await page.getByRole('button', { name: 'account and appearance' }).click();
  await page.getByRole('menuitemradio', { name: 'Light' }).click();
  expect(await theme()).toBe('light');
  await page.reload();
  expect(await theme()).toBe('light');
});
