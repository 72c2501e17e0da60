import { demoCatalogue } from '@flangewise/catalogue';
import type { ExplainAnswer, SolveAnswer } from '@flangewise/model';
import { expect, it } from 'vitest';
import { apiOf } from './api.js';
import { explainOf } from './command-line.js';
import { candidateRow, findSystems, idInAddress, importInquiry, openNewInquiry } from './journey.js';
import { openAs } from './page.js';
import { step } from './step.js';
import { plain } from './text.js';

it('names what keeps glass from 16 bar, and finds systems once that is mended', async () => {
  const page = await openAs('engineer');
  await step('enter the inquiry from a file', async () => {
    await openNewInquiry(page);
    await importInquiry(page, '07-glass-16-bar');
  });
  await step('find no system', async () => {
    const solved = await findSystems<SolveAnswer>(page);
    expect(solved).toMatchObject({ result: 'impossible', candidates: [] });
    await page.getByRole('heading', { name: 'Nothing in the range fits', level: 1 }).waitFor();
  });

  const api = await apiOf(page);
  const { document } = await api.inquiries.get.query({ id: idInAddress(page, 'inquiries') });
  const explained: ExplainAnswer = await explainOf(document);
  await step('name glass and 16 bar as the conflict, and nothing else', async () => {
    await page.getByRole('heading', { name: /exclude each other$/ }).waitFor();
    expect(await page.getByRole('heading', { name: /exclude each other$/ }).count()).toBe(1);
    const glass = page.getByRole('listitem').filter({ hasText: /^glass vessel$/ });
    const named = await page.getByRole('list').filter({ has: glass }).getByRole('listitem').allInnerTexts();
    expect(named.map(plain).sort()).toEqual(['glass vessel', 'pressure 16 bar(g)']);
    expect(explained.conflicts.map(({ statements }) => statements.map(({ path }) => path).sort())).toEqual([
      ['process.pressure.highest', 'sets[0].construction'],
    ]);
  });
  const repairs = page.getByRole('listitem').filter({ has: page.getByRole('button', { name: 'Try' }) });
  await step('show what would mend it: lined steel, or glass at a lower pressure', async () => {
    const shown = (await repairs.allInnerTexts()).map((text) => plain(text).toLowerCase());
    expect(shown).toHaveLength(explained.repairs.length);
    for (const { text } of explained.repairs) expect(shown.join('\n')).toContain(plain(text).toLowerCase());
    expect(shown.some((text) => /without “glass vessel”.*lined/.test(text))).toBe(true);
    expect(shown.some((text) => /changed to at most [\d.]+ bar\(g\).*glass/.test(text))).toBe(true);
  });

  const vesselOf = page.getByLabel('Vessel of');
  const stored = async (): Promise<unknown> =>
    (await api.inquiries.get.query({ id: idInAddress(page, 'inquiries') })).document;
  const tryLined = async (): Promise<void> => {
    await repairs.filter({ hasText: 'lined' }).getByRole('button', { name: 'Try' }).click();
    await page.getByRole('button', { name: 'The client agrees: keep it' }).waitFor();
    expect(await vesselOf.inputValue()).toBe('');
  };
  await step('show a repair in the inquiry, to be kept or taken back before anything is saved', async () => {
    await tryLined();
    expect(await page.getByRole('button', { name: 'Find systems' }).first().isDisabled()).toBe(true);
    await page.getByRole('button', { name: 'Take it back' }).click();
    expect(await vesselOf.inputValue()).toBe('glass');
  });
  await step('come back to what is stored when nobody kept the repair', async () => {
    await page.goBack();
    await tryLined();
    await page.reload();
    await page.getByRole('heading', { name: 'Inquiry', level: 1 }).waitFor();
    expect(await vesselOf.inputValue()).toBe('glass');
    expect(await stored()).toEqual(document);
  });
  await step('keep it when told that the client agrees, not yet saved', async () => {
    await page.goto(`/inquiries/${idInAddress(page, 'inquiries')}/candidates`);
    await tryLined();
    await page.getByRole('button', { name: 'The client agrees: keep it' }).click();
    await page.getByText('not saved', { exact: true }).waitFor();
    expect(await stored()).toEqual(document);
  });
  await step('find systems with it: lined, as the repair says', async () => {
    const { candidates } = await findSystems<SolveAnswer>(page);
    expect(candidates.length).toBeGreaterThan(0);
    for (const { name, title, system } of candidates) {
      const vessel = demoCatalogue.items.find(({ id }) => id === system.sets?.[0]?.choices.vessel);
      expect(vessel?.name, `the vessel of ${title}`).toMatch(/lined/);
      expect(plain(await candidateRow(page, name).innerText())).toContain(title);
    }
  });
});
