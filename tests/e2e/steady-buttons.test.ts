import type { Locator, Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { openNewInquiry } from './journey.js';
import { openAs } from './page.js';
import { step } from './step.js';

/** Presses a button as a hand does it: the pointer goes down, rests, and comes up where it went down. */
async function press(page: Page, button: Locator): Promise<void> {
  await button.scrollIntoViewIfNeeded();
  const before = await button.boundingBox();
  if (before === null) throw new Error('the button was to be on the page');
  await page.mouse.move(before.x + before.width / 2, before.y + before.height / 2);
  await page.mouse.down();
  // As long as a finger stays; what leaving the field sets off has come by then.
  await page.waitForTimeout(250);
  expect(await button.boundingBox(), 'place of the button while it is pressed').toEqual(before);
  await page.mouse.up();
}

it('keeps every button in its place while it is pressed, whatever the field that is left has to say', async () => {
  const page = await openAs('engineer');
  await openNewInquiry(page);
  const title = page.getByLabel('Title', { exact: true });
  const refused = page.getByText('The inquiry needs a title');
  const button = (name: string): Locator => page.getByRole('button', { name, exact: true }).first();

  await step('add a medium out of the empty title', async () => {
    await title.focus();
    await press(page, button('Add a medium'));
    await page.getByLabel('Substance').waitFor();
    await refused.waitFor();
  });
  await step('add a vessel set out of a volume that is refused', async () => {
    await page.getByLabel('Liquid in the vessel').fill('1.5 kg');
    await press(page, button('Add a vessel set'));
    await button('Remove set 2').waitFor();
  });
  await step('remove it out of a volume that is refused', async () => {
    await page.getByLabel('or volume of the vessel').first().fill('2 kg');
    await press(page, button('Remove set 2'));
    await button('Remove set 2').waitFor({ state: 'detached' });
  });
  await step('remove the medium out of a share that is refused', async () => {
    await page.getByLabel('Share by mass', { exact: true }).fill('20 K');
    await press(page, button('Remove medium 1'));
    await page.getByLabel('Substance').waitFor({ state: 'detached' });
  });
  await step('unfold what is asked less often out of a temperature that is refused', async () => {
    await page.getByRole('group', { name: 'Temperature' }).getByLabel('highest').fill('5 bar');
    await press(page, page.getByText('More about solids, gas supply and hazards'));
    await page.getByLabel('Density of the batch').waitFor();
  });
  await step('forget what was typed, out of the empty title', async () => {
    await page.reload();
    await title.fill('Typed');
    await page.reload();
    await title.fill('');
    await press(page, button('Forget it'));
    await button('Forget it').waitFor({ state: 'detached' });
    expect(await page.getByRole('group', { name: 'Temperature' }).getByLabel('highest').inputValue()).toBe(
      '',
    );
  });
  await step('save out of a field that was just mended', async () => {
    await title.fill('Kept at the first press');
    await press(page, button('Save'));
    await page.waitForURL(/\/inquiries\/(?!new)[\w-]+$/);
  });
});
