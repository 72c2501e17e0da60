import type { Locator } from 'playwright-core';
import { expect, it } from 'vitest';
import { apiOf, readInquiry, saveJob } from './api.js';
import { waitForChecks } from './journey.js';
import { openAs } from './page.js';
import { step } from './step.js';

/** What stands beside a button about why it cannot be pressed. */
const reasonBeside = async (button: Locator): Promise<string> => {
  const id = await button.getAttribute('aria-describedby');
  return id === null ? '' : button.page().locator(`[id="${id}"]`).innerText();
};

it('leads a special from the workspace to its release, and says why a button cannot be pressed', async () => {
  const ours = await openAs('engineer');
  const api = await apiOf(ours);
  const { systemId } = await saveJob(api, readInquiry('06-high-pressure'));
  await step('call the special by its name, once', async () => {
    await ours.goto(`/systems/${systemId}`);
    await waitForChecks(ours);
    const cell = ours.getByText('System A', { exact: true }).locator('..');
    expect(await cell.innerText()).toContain('Special vessel 2 L');
    const delivery = ours.getByText('Delivery', { exact: true }).first().locator('..');
    expect(await delivery.innerText()).not.toContain('Special vessel');
  });
  const { id } = await api.offers.create.mutate({ systemId, date: '2026-11-24', discountPercent: '10' });
  await step('tell the engineer why it cannot be sent', async () => {
    await ours.goto(`/offers/${id}`);
    const send = ours.getByRole('button', { name: 'Send the offer' });
    await send.waitFor();
    expect(await send.isDisabled()).toBe(true);
    expect(await reasonBeside(send)).toBe('Not ready to be sent');
    await ours.getByRole('heading', { name: 'Before it can be sent' }).waitFor();
  });
  const sales = await openAs('sales');
  await step('tell sales support what is waited for, and let it revise', async () => {
    await sales.goto(`/offers/${id}`);
    await sales.getByText('It waits for an approver to release the discount and the special.').waitFor();
    expect(await sales.getByRole('button', { name: 'Send the offer' }).isDisabled()).toBe(true);
    expect(await sales.getByRole('button', { name: 'Revise' }).isEnabled()).toBe(true);
  });
  const approver = await openAs('approver');
  await approver.goto(`/offers/${id}`);
  await step('tell the approver who sends and what is waited for', async () => {
    await approver
      .getByText(
        /^Applications engineers and sales support revise and send offers; this one waits for an approver/,
      )
      .waitFor();
  });
  for (const what of ['discount', 'special'] as const)
    await step(`release the ${what}, with a reason`, async () => {
      const release = approver.getByRole('button', { name: `Release the ${what}` });
      await release.waitFor();
      expect(await release.isDisabled()).toBe(true);
      expect(await reasonBeside(release)).toContain('Give the reason first');
      await approver.getByLabel(`Why the ${what} may go out`).fill('Agreed with the client');
      expect(await reasonBeside(release)).toBe('');
      await release.click();
      await approver
        .getByText(`${what === 'discount' ? 'Discount' : 'Special'} released by Marit Oswaldine`)
        .waitFor();
    });
});
