import type { SolveAnswer } from '@flangewise/model';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import {
  candidateRow,
  findSystems,
  importInquiry,
  makeOffer,
  openNewInquiry,
  takeCandidate,
  waitForChecks,
} from './journey.js';
import { openAs } from './page.js';
import { step } from './step.js';
import { openSlot, option, otherOption, readSlot, saving, showList } from './workspace.js';

/** Nothing stands beyond the right edge. */
const fitsAcross = async (page: Page): Promise<void> => {
  const [content, window] = await page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    return [scrollWidth, clientWidth];
  });
  expect(content, `width of the content of ${page.url()} in a window of ${window} px`).toBeLessThanOrEqual(
    window,
  );
};

it('works on a tablet, from the inquiry to a saved system and its offer', async () => {
  const page = await openAs('engineer', { width: 1024 });
  await fitsAcross(page);
  await step('enter the inquiry from a file', async () => {
    await openNewInquiry(page);
    await importInquiry(page, '02-hydrochloric-acid');
    await fitsAcross(page);
  });
  await step('find systems', async () => {
    const { candidates } = await findSystems<SolveAnswer>(page);
    for (const { name } of candidates) await candidateRow(page, name).waitFor();
    await fitsAcross(page);
  });
  await step('take the first candidate', () => takeCandidate(page, 'A'));
  await fitsAcross(page);
  await step('change a slot and keep it', async () => {
    await showList(page);
    await openSlot(page, 'Pressure gauge');
    const name = await otherOption(page);
    await saving(page, () => option(page, name).click());
    await page.reload();
    await waitForChecks(page);
    await showList(page);
    expect(await readSlot(page, 'Pressure gauge')).toContain(name);
    await fitsAcross(page);
  });
  await step('make the offer', () => makeOffer(page));
  await fitsAcross(page);
});
