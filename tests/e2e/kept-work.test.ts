import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { type Api, apiOf, readInquiry, saveJob } from './api.js';
import { waitForChecks } from './journey.js';
import { openAs } from './page.js';
import { step } from './step.js';
import { openSlot, option, otherOption, readSlot, saving, showList } from './workspace.js';

const gauges = [
  'Pressure gauge 0 to 400 bar, 6 mm, 1.4404',
  'Pressure gauge 0 to 160 bar, 6 mm, 1.4404',
] as const;

const openSystem = async (page: Page, systemId: string): Promise<void> => {
  await page.goto(`/systems/${systemId}`);
  await waitForChecks(page);
  await showList(page);
};

const gaugeOf = async (api: Api, systemId: string): Promise<unknown> =>
  (await api.systems.get.query({ id: systemId })).document.sets?.[0]?.choices.pressureGauge;

const gaugeOn = (page: Page): Promise<string> => readSlot(page, 'Pressure gauge');

it('loses neither one’s own change nor that of somebody else who was quicker', async () => {
  const mine = await openAs('engineer');
  const api = await apiOf(mine);
  const { systemId } = await saveJob(api, readInquiry('01-hydrogenation'));
  await openSystem(mine, systemId);
  await step('let another session change the gauge of the same system', async () => {
    const { document, version } = await api.systems.get.query({ id: systemId });
    const sets = document.sets?.map((set) => ({
      ...set,
      choices: { ...set.choices, pressureGauge: 'PG-3005' },
    }));
    await api.systems.save.mutate({ id: systemId, version, document: { ...document, sets } });
  });
  const question = mine.getByRole('dialog', { name: 'Someone else changed it' });
  await step('ask whose change stands', async () => {
    await openSlot(mine, 'Pressure gauge');
    await option(mine, gauges[0]).click();
    await question.waitFor();
    const row = question.getByRole('row', { name: /Pressure gauge/ });
    expect(await row.innerText()).toContain(gauges[0]);
    expect(await gaugeOf(api, systemId)).toBe('PG-3005');
  });
  await step('keep mine when told so', async () => {
    await saving(mine, () => question.getByRole('button', { name: 'Keep mine' }).click());
    await question.waitFor({ state: 'detached' });
    expect(await gaugeOf(api, systemId)).toBe('PG-2003');
    expect(await gaugeOn(mine)).toContain(gauges[0]);
  });
});

it('keeps changes while the line is down, over a reload, and saves them when it is back', async () => {
  const page = await openAs('engineer');
  const api = await apiOf(page);
  const { systemId } = await saveJob(api, readInquiry('01-hydrogenation'));
  await openSystem(page, systemId);
  const saves = '**/api/trpc/systems.save**';
  await page.route(saves, (route) => route.abort('internetdisconnected'));
  await step('say that the change is kept on this computer', async () => {
    await openSlot(page, 'Pressure gauge');
    await option(page, gauges[0]).click();
    await page.getByRole('status').filter({ hasText: '1 change is kept on this computer' }).waitFor();
    expect(await gaugeOn(page)).toContain(gauges[0]);
    expect(await gaugeOf(api, systemId)).not.toBe('PG-2003');
  });
  await step('still have it after a reload', async () => {
    await page.reload();
    await waitForChecks(page);
    await showList(page);
    expect(await gaugeOn(page)).toContain(gauges[0]);
  });
  await step('save it when the line is back', async () => {
    await saving(page, async () => {
      await page.unroute(saves);
      await page.evaluate(() => dispatchEvent(new Event('online')));
    });
    expect(await gaugeOf(api, systemId)).toBe('PG-2003');
    await page
      .getByRole('status')
      .filter({ hasText: 'kept on this computer' })
      .waitFor({ state: 'detached' });
  });
});

it('says of a change at once that it is not saved yet', async () => {
  const page = await openAs('engineer');
  const api = await apiOf(page);
  const { systemId } = await saveJob(api, readInquiry('01-hydrogenation'));
  await openSystem(page, systemId);
  await openSlot(page, 'Pressure gauge');
  await page.evaluate(() => {
    const said: string[] = [];
    Object.assign(window, { said });
    const listen = (): void => {
      const text = /Not saved yet|Saving …|Saved \d/.exec(
        document.querySelector('header')?.innerText ?? '',
      )?.[0];
      if (text !== undefined && text !== said.at(-1)) said.push(text);
    };
    listen();
    new MutationObserver(listen).observe(document.body, {
      childList: true,
      characterData: true,
      subtree: true,
    });
  });
  await saving(page, () => option(page, gauges[0]).click());
  await page
    .getByText(/^Saved \d/)
    .first()
    .waitFor();
  const said = await page.evaluate(() => (window as unknown as { readonly said: readonly string[] }).said);
  expect(said.map((text) => text.replace(/\d/, 'hh:mm'))).toEqual([
    'Saved hh:mm',
    'Not saved yet',
    'Saving …',
    'Saved hh:mm',
  ]);
});

it('takes along what is changed while a candidate is being saved', async () => {
  const page = await openAs('engineer');
  const api = await apiOf(page);
  const { id: inquiryId } = await api.inquiries.create.mutate({ document: readInquiry('01-hydrogenation') });
  await page.goto(`/inquiries/${inquiryId}/candidates/A`);
  await waitForChecks(page);
  await showList(page);
  await openSlot(page, 'Pressure gauge');
  const name = await otherOption(page);
  let letThrough = (): void => undefined;
  const held = new Promise<void>((resolve) => (letThrough = resolve));
  await page.route('**/systems.create**', async (route) => {
    await held;
    await route.continue();
  });
  await page.getByRole('button', { name: 'Save it' }).first().click();
  await option(page, name).click();
  expect(await gaugeOn(page)).toContain(name);
  await saving(page, () => Promise.resolve(letThrough()));
  await page.waitForURL(/\/systems\/[\w-]+$/);
  await waitForChecks(page);
  await page.reload();
  await waitForChecks(page);
  await showList(page);
  expect(await gaugeOn(page)).toContain(name);
});
