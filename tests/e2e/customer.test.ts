import type { InquiryInput } from '@flangewise/model';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { type Api, apiOf, readInquiry, saveJob } from './api.js';
import { saveDocuments } from './documents.js';
import { candidateRow, waitForChecks } from './journey.js';
import { openAs } from './page.js';
import { clients } from './people.js';
import { commercialIn, leakedPricesIn, priceListsIn, prices, pricesIn } from './prices.js';
import { figuresOf } from './figures.js';
import { step } from './step.js';
import { type Received, record } from './traffic.js';
import { openSlot, option, otherOption, readSlot, readSlots, showList, showUnfit } from './workspace.js';

/** An inquiry that leaves nothing open, so that its offer can be sent. */
const whole: InquiryInput = {
  title: 'Hydrolysis in hot water',
  process: {
    kind: 'hydrolysis',
    media: [{ substance: 'water', role: 'solvent' }],
    pressure: { lowest: '1 bar', usual: '10 bar', highest: '20 bar' },
    temperature: { lowest: '20 °C', usual: '120 °C', highest: '150 °C' },
    viscosity: { start: '1 mPa·s', end: '0.2 mPa·s' },
    stirringSpeed: { lowest: '300 rpm', highest: '600 rpm' },
    density: '1000 kg/m³',
    exothermic: false,
    selfReactive: false,
  },
  sets: [{ batchVolume: '1.5 L' }],
  site: { zone: 'none', country: 'Germany', ceilingHeight: '3 m', coolingWater: true },
  requirements: { openingsPerDay: 1 },
};

interface Own {
  readonly inquiryId: string;
  readonly systemId: string;
  readonly offerId: string;
}

/** What an engineer did for both clients before the customer comes. */
async function prepare(api: Api): Promise<Own> {
  await saveJob(api, {
    ...readInquiry('04-screening'),
    title: 'Screening of a rival',
    client: clients.kelmoor,
  });
  const job = await saveJob(api, { ...whole, client: clients.sundrey });
  const { id: offerId } = await api.offers.create.mutate({ systemId: job.systemId, date: '2026-11-24' });
  await api.offers.send.mutate({ id: offerId });
  return { ...job, offerId };
}

/** The way of a person through everything that belongs to one job; returns all that the browser received. */
async function walk(page: Page, own: Own): Promise<readonly Received[]> {
  const traffic = record(page);
  await step('list the inquiries', async () => {
    await page.goto('/');
    await page.getByRole('link', { name: whole.title }).first().waitFor();
  });
  await step('show the candidates', async () => {
    await page.goto(`/inquiries/${own.inquiryId}/candidates`);
    await candidateRow(page, 'A').waitFor();
  });
  await step('check a configuration of one’s own', async () => {
    await page.goto(`/systems/${own.systemId}`);
    await waitForChecks(page);
    await showList(page);
    const before = await readSlots(page);
    await openSlot(page, 'Pressure gauge');
    const name = await otherOption(page);
    await option(page, name).click();
    expect(await readSlot(page, 'Pressure gauge')).toContain(name);
    expect(await readSlots(page)).not.toEqual(before);
    await openSlot(page, 'Vessel');
    await showUnfit(page);
    await page
      .getByRole('button', { name: /^Why not / })
      .first()
      .click();
    await page.getByRole('button', { name: 'Take it all the same' }).waitFor();
  });
  await step('read the offer and its documents', async () => {
    await page.goto(`/offers/${own.offerId}`);
    expect((await saveDocuments(page)).size).toBe(6);
  });
  return traffic.received();
}

const bodiesOf = (all: readonly Received[], kind: Received['kind']): string =>
  all
    .filter((one) => one.kind === kind)
    .map(({ body }) => body)
    .join('\n');

it('shows a customer their own job and no price of an item, no cost and no other client', async () => {
  const ours = await openAs('engineer');
  const own = await prepare(await apiOf(ours));

  await step('find prices and other clients in what the engineer receives', async () => {
    const received = await walk(ours, own);
    expect(pricesIn(bodiesOf(received, 'other')).length).toBeGreaterThan(100);
    expect(commercialIn(bodiesOf(received, 'other'))).toHaveLength(3);
    expect(bodiesOf(received, 'other')).toContain(clients.kelmoor);
  });

  const page = await openAs('sundrey');
  const received = await walk(page, own);
  const data = bodiesOf(received, 'other');
  const scripts = bodiesOf(received, 'script');
  await step('have received pages, data, the engine and its rules', async () => {
    expect(data).toContain(whole.title);
    expect(scripts).toContain('stirring.coupling-torque');
  });
  await step('say nothing on their offer of what had to happen before it was sent', async () => {
    await page.getByRole('heading', { name: 'Revisions' }).waitFor();
    expect(await page.getByRole('heading', { name: 'Before it can be sent' }).count()).toBe(0);
    expect(await page.getByText('Nothing is left to do').count()).toBe(0);
  });
  await step('show their own inquiries only', async () => {
    await page.goto('/');
    await page.getByRole('link', { name: whole.title }).first().waitFor();
    const rows = await page.getByRole('table').getByRole('row').allInnerTexts();
    for (const row of rows.slice(1)) expect(row).toContain(clients.sundrey);
    for (const secret of [clients.kelmoor, 'Screening of a rival', 'Davo Ferrant', 'kelmoor.example'])
      expect(data.includes(secret), `"${secret}" in what the customer received`).toBe(false);
  });
  await step('receive no commercial figure but the sums of the offer', async () => {
    const figures = await figuresOf(received.filter(({ kind }) => kind !== 'script').map(({ body }) => body));
    for (const { url, kind, body } of received) {
      if (kind === 'script') {
        expect(priceListsIn(body), url).toEqual([]);
        continue;
      }
      expect(commercialIn(body), url).toEqual([]);
      expect(
        pricesIn(body).filter((price) => !figures.has(price)),
        url,
      ).toEqual([]);
    }
    expect(leakedPricesIn(scripts)).toEqual([]);
    // Were the prices of the list in a script, even without their items, they would be found.
    expect(leakedPricesIn(`${scripts};[${[...prices].join()}]`).length).toBeGreaterThan(prices.size / 2);
  });
});
