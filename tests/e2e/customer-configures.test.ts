import { expect, it } from 'vitest';
import { apiOf, readInquiry } from './api.js';
import { figuresOf } from './figures.js';
import { candidateRow, idInAddress, waitForChecks } from './journey.js';
import { openAs } from './page.js';
import { commercialIn, pricesIn } from './prices.js';
import { step } from './step.js';
import { plain } from './text.js';
import { record } from './traffic.js';
import { openSlot, option, otherOption, readSlot, saving, showList } from './workspace.js';

it('lets a customer check, change and save a candidate, until an engineer takes the inquiry up', async () => {
  const page = await openAs('sundrey');
  const traffic = record(page);
  const api = await apiOf(page);
  const { id: inquiryId } = await api.inquiries.create.mutate({ document: readInquiry('01-hydrogenation') });
  const main = page.getByRole('main');
  const openFirst = async (): Promise<void> => {
    await page.goto(`/inquiries/${inquiryId}/candidates`);
    await candidateRow(page, 'A')
      .getByRole('link', { name: /^Open A,/ })
      .click();
    await waitForChecks(page);
  };
  const note = (text: string) => page.getByRole('note').filter({ hasText: text });
  const keep = page.getByRole('button', { name: 'Save it' }).first();

  await step('open the first candidate, and say that it is not saved', async () => {
    await openFirst();
    await note('This candidate is not saved yet').waitFor();
    expect(await api.inquiries.get.query({ id: inquiryId })).toMatchObject({ systems: [] });
  });
  await step('show checks with demand, limit and margin, and no price', async () => {
    await page.getByRole('button', { name: /^\d+ more met/ }).click();
    const checks = page.getByRole('region', { name: 'Chosen slot and checks' });
    const rows = (await checks.getByRole('button').allInnerTexts()).map(plain);
    expect(
      rows.filter((row) => / [−\d][\d. ]* of [\d. ]+ \S+ [+−][\d.]+ \S+$/.test(row)).length,
    ).toBeGreaterThan(15);
    expect(await main.innerText()).not.toMatch(/price|€/i);
  });

  let gauge = '';
  await step('change a slot, save the whole, and find it saved', async () => {
    await showList(page);
    await openSlot(page, 'Pressure gauge');
    gauge = await otherOption(page);
    await option(page, gauge).click();
    await keep.click();
    await page.waitForURL(/\/systems\/[\w-]+$/);
    await waitForChecks(page);
    await showList(page);
    expect(await readSlot(page, 'Pressure gauge')).toContain(gauge);
  });
  const systemId = idInAddress(page, 'systems');
  let thermowell = '';
  await step('save further changes by itself', async () => {
    await openSlot(page, 'Thermowell');
    thermowell = await otherOption(page);
    await saving(page, () => option(page, thermowell).click());
    await page.reload();
    await waitForChecks(page);
    await showList(page);
    expect(await readSlot(page, 'Thermowell')).toContain(thermowell);
    expect(await page.getByRole('note').count()).toBe(0);
    expect(await page.getByRole('button', { name: 'freeze' }).count()).toBe(0);
  });

  const ours = await openAs('engineer');
  await step('show it to the engineer, beside the candidates', async () => {
    await ours.goto(`/inquiries/${inquiryId}/candidates`);
    const saved = ours.getByRole('region', { name: 'One system is saved' });
    await saved.getByText('Lena Quorish').waitFor();
    await saved.getByRole('link').click();
    await waitForChecks(ours);
    expect(idInAddress(ours, 'systems')).toBe(systemId);
    await showList(ours);
    expect(await readSlot(ours, 'Pressure gauge')).toContain(gauge);
    expect(await readSlot(ours, 'Thermowell')).toContain(thermowell);
  });
  await step('let the engineer take it up by a change', async () => {
    await openSlot(ours, 'Pressure gauge');
    const other = await otherOption(ours);
    await saving(ours, () => option(ours, other).click());
  });

  await step('tell the customer, who saves too late, whom to ask', async () => {
    await openSlot(page, 'Pressure gauge');
    await option(page, await otherOption(page)).click();
    await page.getByRole('alert').filter({ hasText: 'taken up by Ilse Tamrin' }).waitFor();
  });
  await step('let the customer go on checking, and say why nothing is saved', async () => {
    await page.reload();
    await note('Ilse Tamrin has taken this inquiry up').waitFor();
    await openFirst();
    await note('What you try here stays on this page').waitFor();
    expect(await keep.count()).toBe(0);
    await showList(page);
    await openSlot(page, 'Pressure gauge');
    const name = await otherOption(page);
    await option(page, name).click();
    expect(await readSlot(page, 'Pressure gauge')).toContain(name);
    await page.goto(`/inquiries/${inquiryId}`);
    await note('Ilse Tamrin has taken this inquiry up').waitFor();
    expect(await page.getByRole('button', { name: 'Find systems' }).count()).toBe(0);
    expect(await page.getByLabel('Title', { exact: true }).isDisabled()).toBe(true);
    const { systems } = await api.inquiries.get.query({ id: inquiryId });
    expect(systems).toHaveLength(1);
  });

  await step('have received no price and no cost', async () => {
    const received = await traffic.received();
    expect(received.filter(({ url }) => url.includes('systems.save')).length).toBeGreaterThan(0);
    const data = received.filter(({ kind }) => kind === 'other');
    const figures = await figuresOf(data.map(({ body }) => body));
    for (const { url, body } of data) {
      expect(commercialIn(body), url).toEqual([]);
      expect(
        pricesIn(body).filter((price) => !figures.has(price)),
        url,
      ).toEqual([]);
    }
  });
});
