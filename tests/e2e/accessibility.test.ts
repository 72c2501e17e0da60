import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { type Api, apiOf, readInquiry, saveJob } from './api.js';
import { candidateRow, waitForChecks } from './journey.js';
import { openAs, openPage, signIn } from './page.js';
import { clients } from './people.js';
import { step } from './step.js';
import { openSlot, showList, showUnfit } from './workspace.js';

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
      nodes.map(
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
  const job = await saveJob(api, { ...readInquiry('01-hydrogenation'), client: clients.sundrey });
  const { id: offerId } = await api.offers.create.mutate({ systemId: job.systemId, date: '2026-11-24' });
  const { id: impossibleId } = await api.inquiries.create.mutate({
    document: readInquiry('07-glass-16-bar'),
  });
  return { ...job, offerId, impossibleId };
}

async function openCandidates(page: Page, { inquiryId }: Job): Promise<void> {
  await page.goto(`/inquiries/${inquiryId}/candidates`);
  await candidateRow(page, 'A').waitFor();
}

type State = readonly [title: string, open: (page: Page, job: Job) => Promise<unknown>];

/** Every page of an engineer, and how it is brought into the state that is looked at. */
const states: readonly State[] = [
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
  ['candidates', openCandidates],
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
    'range',
    async (page) => {
      await page.goto('/range');
      await page.getByRole('table', { name: 'Parts of the range' }).waitFor();
    },
  ],
  [
    'rules',
    async (page) => {
      await page.goto('/rules');
      await page.getByRole('table').waitFor();
    },
  ],
  [
    'rules by source',
    async (page) => {
      await page.getByRole('tab', { name: 'By source' }).click();
      await page.getByRole('tabpanel').getByRole('link').first().waitFor();
    },
  ],
  [
    'page of a rule',
    async (page) => {
      await page.goto('/rules/stirring.coupling-torque');
      await page.getByRole('article').waitFor();
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

/** What only customers see, or see otherwise: a candidate on trial, and what an engineer has taken up. */
const customerStates: readonly State[] = [
  [
    'candidate',
    async (page, { inquiryId }) => {
      await page.goto(`/inquiries/${inquiryId}/candidates/A`);
      await waitForChecks(page);
      await page.getByRole('note').waitFor();
    },
  ],
  [
    'inquiry that is taken up',
    async (page, { inquiryId }) => {
      await page.goto(`/inquiries/${inquiryId}`);
      await page.getByRole('note').waitFor();
    },
  ],
  ['candidates', openCandidates],
];

const openDraft = async (page: Page): Promise<string> => {
  const { revision } = await (await apiOf(page)).catalogue.openDraft.mutate({});
  return `/range/revisions/${revision.id}`;
};

/** What the keeper of the range sees. */
const keeperStates: readonly State[] = [
  [
    'revisions',
    async (page) => {
      await page.goto('/range/revisions');
      await page.getByRole('table', { name: 'Revisions of the range' }).waitFor();
    },
  ],
  [
    'item of a draft',
    async (page) => {
      await page.goto(`${await openDraft(page)}#CV-1001`);
      await page.getByRole('dialog').getByRole('button', { name: 'Change it' }).waitFor();
    },
  ],
  [
    'fields of an item with one that is refused',
    async (page) => {
      await page.getByRole('button', { name: 'Change it' }).click();
      await page.getByLabel('Mass, kg').fill('heavy');
      await page.getByText('it is no number').waitFor();
    },
  ],
  [
    'file that cannot be taken in',
    async (page) => {
      await page.goto(`${await openDraft(page)}/files`);
      await page.getByLabel('choose a file').setInputFiles({
        name: 'broken.csv',
        mimeType: 'text/csv',
        buffer: Buffer.from('number,mass [kg]\nCV-1001,heavy\n'),
      });
      await page.getByRole('alert').filter({ hasText: 'in the way' }).waitFor();
    },
  ],
  [
    'file that can be taken in',
    async (page) => {
      await page.getByLabel('choose a file').setInputFiles({
        name: 'good.csv',
        mimeType: 'text/csv',
        buffer: Buffer.from('number,mass [kg]\nCV-1001,3.25\n'),
      });
      await page.getByRole('button', { name: 'Put it into the draft' }).click();
      await page.getByText('It is in the draft now.').waitFor();
    },
  ],
  [
    'changes of a draft',
    async (page) => {
      await page.goto(`${await openDraft(page)}/changes`);
      await page.getByText('one item changed').waitFor();
      await page.getByText('Nothing hinders the release').waitFor();
    },
  ],
  [
    'audit',
    async (page) => {
      await page.goto(`${await openDraft(page)}/audit`);
      await page.getByRole('button', { name: 'Begin the audit' }).waitFor();
    },
  ],
];

/** Shows the page as people see it who chose dark pages, or light ones. */
const show = (page: Page, theme: 'light' | 'dark'): Promise<unknown> =>
  page.evaluate((chosen) => Object.assign(document.documentElement.dataset, { theme: chosen }), theme);

/** Looks at a page with dark colours and with light ones; what was found there, by its title. */
async function look(page: Page, title: string): Promise<Readonly<Record<string, readonly string[]>>> {
  const found: Record<string, readonly string[]> = {};
  for (const theme of ['dark', 'light'] as const) {
    await show(page, theme);
    const violations = await violationsOn(page);
    if (violations.length > 0) found[`${title}, ${theme}`] = violations;
  }
  return found;
}

async function lookAtAll(page: Page, all: readonly State[], job: Job): Promise<object> {
  const found = {};
  for (const [title, open] of all) {
    await step(`open ${title}`, () => open(page, job));
    Object.assign(found, await look(page, title));
  }
  return found;
}

it('keeps nobody out, with light pages and with dark ones', async () => {
  const page = await openPage({ path: '/sign-in' });
  expect(await look(page, 'sign-in')).toEqual({});
  await signIn(page, 'engineer');
  const job = await prepare(await apiOf(page));
  expect(await lookAtAll(page, states, job)).toEqual({});
  const customer = await openAs('sundrey');
  expect(await lookAtAll(customer, customerStates, job)).toEqual({});
  const keeper = await openAs('keeper');
  expect(await lookAtAll(keeper, keeperStates, job)).toEqual({});
  const { revision } = await (await apiOf(keeper)).catalogue.openDraft.mutate({});
  await (await apiOf(keeper)).catalogue.discardDraft.mutate({ id: revision.id, version: revision.version });
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
