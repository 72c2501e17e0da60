import type { SolveAnswer } from '@flangewise/model';
import { expect, it } from 'vitest';
import { apiOf } from './api.js';
import { checkOf } from './command-line.js';
import {
  candidateRow,
  findSystems,
  idInAddress,
  importInquiry,
  openNewInquiry,
  takeCandidate,
  waitForChecks,
} from './journey.js';
import { openAs } from './page.js';
import { step } from './step.js';
import { plain, spaced } from './text.js';
import { openSlot, option, otherOptions, readSlots, saving, showList } from './workspace.js';

const asked = ['Which media does the vessel hold, with concentration?', 'At which speed is it stirred?'];

it('asks a polymerisation for medium and speed, and tells how fast each stirrer may turn', async () => {
  const page = await openAs('engineer');
  await step('enter the inquiry from a file', async () => {
    await openNewInquiry(page);
    await importInquiry(page, '03-polymerisation');
    for (const question of asked) await page.getByRole('listitem').getByText(spaced(question)).waitFor();
  });
  const { openPoints } = await step('find systems', () => findSystems<SolveAnswer>(page));
  await step('list what is open beside the candidates', async () => {
    const more = page.getByRole('button', { name: /^\d+ more$/ });
    await candidateRow(page, 'A').waitFor();
    while ((await more.count()) > 0) await more.first().click();
    expect(openPoints.length).toBeGreaterThan(2);
    for (const { question } of openPoints)
      await page
        .getByRole('listitem')
        .getByText(spaced(plain(question)))
        .waitFor();
  });
  await step('take the first candidate', () => takeCandidate(page, 'A'));
  const api = await apiOf(page);
  const systemId = idInAddress(page, 'systems');
  /** What the page says of the highest speed, held against the command line. */
  const highestSpeed = async (): Promise<string> => {
    const { document } = await api.systems.get.query({ id: systemId });
    const title = 'Highest speed at the highest viscosity';
    const result = (await checkOf(document)).results.find((one) => one.title === title);
    const said = plain(result?.text ?? '');
    expect(said).toMatch(/^At 60 ?000 mPa·s .* may turn at [\d.]+ 1\/min at most, limited by /);
    const more = page.getByRole('button', { name: /^\d+ more met/ });
    if (await more.isVisible()) await more.click();
    await page.getByRole('button', { name: new RegExp(title) }).click();
    const evidence = page.getByRole('dialog', { name: title });
    await evidence.getByText(spaced(said)).waitFor();
    await page.keyboard.press('Escape');
    await evidence.waitFor({ state: 'detached' });
    return said;
  };
  await step('show the highest speed of each stirrer and coupling that fits', async () => {
    await showList(page);
    const speeds = [await highestSpeed()];
    for (const slot of ['Stirrer', 'Coupling']) {
      await openSlot(page, slot);
      for (const name of (await otherOptions(page)).slice(0, 2)) {
        await openSlot(page, slot);
        await saving(page, () => option(page, name).click());
        const said = await highestSpeed();
        expect(said).toContain(name);
        speeds.push(said);
      }
    }
    expect(speeds.length).toBeGreaterThan(2);
    expect(new Set(speeds).size, 'different parts, different sentences').toBeGreaterThan(1);
  });
  await step('keep the system', async () => {
    const before = await readSlots(page);
    await page.reload();
    await waitForChecks(page);
    await showList(page);
    expect(await readSlots(page)).toEqual(before);
  });
});
