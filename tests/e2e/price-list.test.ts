import { pricedDemoCatalogue } from '@flangewise/catalogue/prices';
import { expect, it } from 'vitest';
import { apiOf, readInquiry, saveJob } from './api.js';
import { idInAddress, makeOffer, waitForChecks } from './journey.js';
import { openAs } from './page.js';
import { step } from './step.js';
import { plain } from './text.js';

/** A list that nobody gets who does not ask for it. */
const named = pricedDemoCatalogue.priceLists[1]?.id ?? '';

it('prices a system on every page by the list that it names, and offers it with its discount', async () => {
  const page = await openAs('engineer');
  const api = await apiOf(page);
  const { inquiryId, systemId: plainId } = await saveJob(api, readInquiry('04-screening'));
  const { document } = await api.systems.get.query({ id: plainId });
  const offer = { priceList: named, discountPercent: '3' };
  const { id } = await api.systems.create.mutate({ inquiryId, system: { ...document, offer } });
  const main = page.getByRole('main');
  const offered = async () => (await api.offers.get.query({ id: idInAddress(page, 'offers') })).offer;

  await step('show the list and its prices beside the drawing', async () => {
    await page.goto(`/systems/${id}`);
    await waitForChecks(page);
    expect(plain(await main.innerText())).toContain(`list ${named}`);
  });
  await step('and where the offer is drafted, with the discount', async () => {
    await page.goto(`/systems/${id}/offer`);
    await page.getByText(`list ${named}`).waitFor();
    expect(await page.getByLabel('Discount, %').inputValue()).toBe('3');
  });
  await step('offer it so', async () => {
    await page.goto(`/systems/${id}`);
    await waitForChecks(page);
    await makeOffer(page);
    expect(await offered()).toMatchObject({ priceList: named, discountPercent: '3' });
  });
  await step('revise it with the discount emptied: there is none', async () => {
    await page.getByRole('button', { name: 'Revise' }).click();
    await page.getByLabel('Discount, %').fill('');
    const revise = page.getByRole('button', { name: 'Make the next revision' });
    await revise.click();
    await revise.waitFor({ state: 'detached' });
    expect(await offered()).toMatchObject({ revision: 'B', discountPercent: '0' });
  });
});
