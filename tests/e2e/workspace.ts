import type { Locator, Page } from 'playwright-core';
import { plain } from './text.js';

/** The workspace of a system, by what stands on it. */

const slotList = (page: Page): Locator => page.getByRole('list', { name: 'Slots of the system' });

/** Shows the slots of the system as a list. */
export async function showList(page: Page): Promise<void> {
  await page.getByRole('group', { name: 'Show as' }).getByRole('button', { name: 'list' }).click();
  await slotList(page).waitFor();
}

/** Line of a slot in the list, by its title. */
export const slotLine = (page: Page, title: string): Locator =>
  slotList(page).getByRole('button', { name: new RegExp(`^(\\d+ )?${title} `) });

/** Lines of all slots once the engine has said of the present choices what fits: "14 Relief … 2 of 37 fit …". */
export async function readSlots(page: Page): Promise<readonly string[]> {
  const lines = slotList(page).getByRole('listitem');
  await lines.first().waitFor();
  await lines
    .filter({ hasNotText: /\d+ of \d+ fit/ })
    .first()
    .waitFor({ state: 'detached' });
  return (await lines.allInnerTexts()).map(plain);
}

/** Opens a slot and waits for its options. */
export async function openSlot(page: Page, title: string): Promise<void> {
  await slotLine(page, title).click();
  await page.getByRole('region', { name: title }).waitFor();
  await optionsShown(page);
}

/** Waits until the options of the open slot are on the page. */
export async function optionsShown(page: Page): Promise<void> {
  await page.getByRole('radio').first().waitFor();
}

/** An option that fits the other choices. */
export const option = (page: Page, name: string): Locator => page.getByRole('radio', { name, exact: true });

/** Names of the options that fit and are not chosen, in their order. */
export async function otherOptions(page: Page): Promise<readonly string[]> {
  await optionsShown(page);
  return page
    .getByRole('radio', { checked: false })
    .evaluateAll((radios) => radios.map((radio) => (radio as HTMLInputElement).labels?.[0]?.innerText ?? ''));
}

/** The first of them. */
export async function otherOption(page: Page): Promise<string> {
  const [name] = await otherOptions(page);
  if (name === undefined) throw new Error('the open slot was to have another option that fits; it has none');
  return name;
}

/** Line of a slot with what is chosen there and how much fits. */
export async function readSlot(page: Page, title: string): Promise<string> {
  const line = (await readSlots(page)).find((one) => new RegExp(`^(\\d+ )?${title} `).test(one));
  if (line === undefined)
    throw new Error(`the list was to have the slot "${title}"; it has none of that name`);
  return line;
}

/** Shows the options that do not fit the other choices. */
export async function showUnfit(page: Page): Promise<void> {
  await page.getByRole('button', { name: /^Show \d+ that do(es)? not fit$/ }).click();
}

/** An option that does not fit; a click tells why. */
export const unfitOption = (page: Page, name: string): Locator =>
  page.getByRole('button', { name: `Why not ${name}`, exact: true });

/** Does something that changes the system, and waits until that is saved. */
export async function saving(page: Page, act: () => Promise<unknown>): Promise<void> {
  await Promise.all([
    page.waitForResponse((one) => one.url().includes('systems.save') && one.status() === 200),
    act(),
  ]);
}
