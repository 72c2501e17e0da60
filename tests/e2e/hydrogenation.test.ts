import { checkCountText, checkRowsOf } from '@flangewise/documents/drawings';
import { parseSlotPath, slots, type SolveAnswer, type SystemInput } from '@flangewise/model';
import { expect, it } from 'vitest';
import { apiOf, readInquiry } from './api.js';
import { solveOf, narrowOf, checkOf, offerFilesOf } from './command-line.js';
import { csvRows, printed, saveDocuments, withoutSpaces, xlsxRows } from './documents.js';
import {
  candidateRow,
  findSystems,
  idInAddress,
  importInquiry,
  makeOffer,
  openNewInquiry,
  takeCandidate,
  waitForChecks,
} from './journey.js';
import { openAs } from './page.js';
import { clients } from './people.js';
import { step } from './step.js';
import { amount, plain, spaced, wholeAmount } from './text.js';
import {
  openSlot,
  option,
  readSlot,
  readSlots,
  saving,
  showList,
  showUnfit,
  unfitOption,
} from './workspace.js';

const inquiry = readInquiry('01-hydrogenation');
const firstGauge = 'Pressure gauge 0 to 160 bar, 6 mm, 1.4404';
const wideGauge = 'Pressure gauge 0 to 400 bar, 6 mm, 1.4404';
const strongVessel = 'Vessel 2.5 L, 1.4404, PS 200';

/** "1 of 71 fit" for every slot, as the command line has it. */
const fitsOf = async (system: SystemInput): Promise<readonly string[]> =>
  Object.entries((await narrowOf(system)).slots).map(([path, { valid, refused }]) => {
    const slot = parseSlotPath(path)?.slot;
    if (slot === undefined) throw new Error(`"${path}" was to be a slot`);
    return `${slots[slot].title}: ${valid.length} of ${valid.length + refused.length} fit`;
  });

/** The same of the list on the page. */
const fitsIn = (lines: readonly string[]): readonly string[] =>
  lines.map((line) => {
    const title = Object.values(slots).find((slot) =>
      new RegExp(`^(\\d+ )?${slot.title} `).test(line),
    )?.title;
    return `${title}: ${/\d+ of \d+ fit/.exec(line)?.[0]}`;
  });

it('leads from the inquiry for a hydrogenation to the documents of its offer', async () => {
  const page = await openAs('engineer');
  const api = await apiOf(page);

  await step('enter the inquiry from a file', async () => {
    await openNewInquiry(page);
    await importInquiry(page, '01-hydrogenation');
    await page.getByLabel('Client').fill(clients.sundrey);
    await page
      .getByRole('listitem')
      .getByText(spaced('Is 60 bar(g) the total pressure, or that of hydrogen alone?'))
      .waitFor();
  });

  const solved = await step('find systems', () => findSystems<SolveAnswer>(page));
  const inquiryId = idInAddress(page, 'inquiries');
  await step('keep the inquiry as it was in the file', async () => {
    const { document } = await api.inquiries.get.query({ id: inquiryId });
    expect(document).toEqual({ ...inquiry, client: clients.sundrey });
    expect(await solveOf(document)).toEqual(solved);
  });
  await step('show every candidate with price, delivery and least margin', async () => {
    expect(solved.candidates.length).toBeGreaterThan(2);
    for (const { name, title, price, deliveryWeeks, leastMargin } of solved.candidates) {
      const row = candidateRow(page, name);
      await row.waitFor();
      const text = plain(await row.innerText());
      expect(text).toContain(title);
      expect(text).toContain(wholeAmount(price ?? ''));
      expect(text).toContain(`${deliveryWeeks} wk`);
      expect(text).toContain(leastMargin?.title);
      const percent = Number(/(\d+(?:\.\d+)?) %/.exec(text)?.[1]);
      expect(Math.abs(percent / 100 - (leastMargin?.value ?? Number.NaN))).toBeLessThan(0.01);
    }
    await page
      .getByRole('listitem')
      .getByText(spaced('Is 60 bar(g) the total pressure, or that of hydrogen alone?'))
      .waitFor();
  });

  await step('take the first candidate', () => takeCandidate(page, 'A'));
  const systemId = idInAddress(page, 'systems');
  await step('show for every slot how many options fit, as the command line does', async () => {
    await showList(page);
    const { document } = await api.systems.get.query({ id: systemId });
    expect(fitsIn(await readSlots(page))).toEqual(await fitsOf(document));
  });
  await step('show demand, limit and margin of every check', async () => {
    const { document } = await api.systems.get.query({ id: systemId });
    const { results } = await checkOf(document);
    await page.getByText(checkCountText(results), { exact: true }).waitFor();
    await page.getByRole('button', { name: /^\d+ more met/ }).click();
    const rows = (
      await page.getByRole('region', { name: 'Chosen slot and checks' }).getByRole('button').allInnerTexts()
    ).map(plain);
    const compared = results.filter((one) => one.kind === 'hard' && one.utilisation !== undefined);
    expect(new Set(compared.map(({ rule }) => rule)).size).toBeGreaterThan(15);
    for (const { title } of compared) {
      const alike = checkRowsOf(
        compared.filter((one) => one.title === title),
        { numbers: new Map(), setName: () => null },
      );
      const [limit, margin] = [plain(alike[0]?.limit ?? ''), alike.map((row) => plain(row.margin))];
      const shown = rows.filter((row) => row.startsWith(title)).join('; ');
      expect(shown, `the row of "${title}" with demand, limit and margin`).toMatch(/ [−\d].* of [−\d]/);
      expect(shown, `the row of "${title}"`).toContain(limit);
      expect(
        margin.some((one) => shown.includes(one)),
        `"${shown}" to tell the margin ${margin.join(' or ')}`,
      ).toBe(true);
    }
    await page.getByRole('button', { name: /Hot batch leaves room in the vessel/ }).click();
    const evidence = page.getByRole('dialog', { name: 'Hot batch leaves room in the vessel' });
    await evidence.getByRole('table').first().waitFor();
    await page.keyboard.press('Escape');
    await evidence.waitFor({ state: 'detached' });
  });

  const choose = async (slot: string, name: string): Promise<void> => {
    await openSlot(page, slot);
    await saving(page, () => option(page, name).click());
  };
  await step('let a stronger vessel in by a gauge of wider range', async () => {
    await page.evaluate(() => Object.assign(window, { loadedOnce: true }));
    await openSlot(page, 'Vessel');
    await showUnfit(page);
    await unfitOption(page, strongVessel).waitFor();
    await choose('Pressure gauge', wideGauge);
    await choose('Vessel', strongVessel);
  });
  await step('narrow the other slots at once, without loading the page again', async () => {
    const lines = await readSlots(page);
    const { document } = await api.systems.get.query({ id: systemId });
    expect(fitsIn(lines)).toEqual(await fitsOf(document));
    await openSlot(page, 'Pressure gauge');
    expect(await option(page, wideGauge).isChecked()).toBe(true);
    expect(await option(page, firstGauge).count()).toBe(0);
    await showUnfit(page);
    await unfitOption(page, firstGauge).click();
    const { sets = [] } = document;
    const gauged = sets.map((set) => ({ ...set, choices: { ...set.choices, pressureGauge: 'PG-2002' } }));
    const reasons = (await checkOf({ ...document, sets: gauged })).results.filter(
      ({ kind, status }) => kind === 'hard' && status === 'not met',
    );
    expect(reasons.map(({ text }) => text).join(' ')).toContain(firstGauge);
    for (const { text } of reasons)
      await page
        .getByText(spaced(plain(text)))
        .first()
        .waitFor();
    expect(await page.evaluate(() => 'loadedOnce' in window)).toBe(true);
  });

  await step('keep it', async () => {
    await page.reload();
    await waitForChecks(page);
    await showList(page);
    expect(await readSlot(page, 'Vessel')).toContain(strongVessel);
    expect(await readSlot(page, 'Pressure gauge')).toContain(wideGauge);
  });

  await step('make the offer', () => makeOffer(page));
  const { documents: kept, offer } = await api.offers.get.query({ id: idInAddress(page, 'offers') });
  const { document } = await api.systems.get.query({ id: systemId });
  const files = await step('save every document', () => saveDocuments(page));
  const file = (name: string): Buffer => {
    const content = files.get(name);
    if (content === undefined)
      throw new Error(`${name} was to be saved; saved were ${[...files.keys()].join(', ')}`);
    return content;
  };
  await step('write documents of the kind that their names say', async () => {
    expect([...files.keys()].sort()).toEqual(kept.map(({ name }) => name));
    for (const name of ['offer.pdf', 'specification.pdf'])
      expect(file(name).toString('latin1'), name).toMatch(/^%PDF-1\.[\s\S]*%%EOF\s*$/);
    expect(file('section.svg').toString('utf8')).toMatch(/^(<\?xml[^>]*>\s*)?<svg[\s\S]*<\/svg>\s*$/);
    expect(await xlsxRows(file('bill-of-materials.xlsx'))).toEqual(csvRows(file('bill-of-materials.csv')));
  });
  await step('tell the same on the page and in the documents', async () => {
    const text = plain(await page.getByRole('main').innerText());
    const letter = printed(file('offer.pdf'));
    for (const sum of [offer.listTotal, offer.net, offer.total]) {
      expect(text, 'the page of the offer').toContain(amount(sum));
      expect(letter, 'the letter').toContain(withoutSpaces(amount(sum).replace('.00', '').replace('€', '')));
    }
    expect(text).toContain(`${offer.deliveryWeeks} weeks`);
    const positions = await page.getByRole('table', { name: 'Positions' }).getByRole('row').allInnerTexts();
    const [header = [], ...rows] = csvRows(file('bill-of-materials.csv'));
    expect(rows).toHaveLength(positions.length - 1);
    rows.forEach((row, index) => {
      const field = (name: string): string => row[header.indexOf(name)] ?? '';
      const position = plain(positions[index + 1] ?? '');
      for (const name of ['Position', 'Item', 'Name', 'Quantity']) expect(position).toContain(field(name));
    });
    expect(printed(file('specification.pdf'))).toContain(withoutSpaces(strongVessel));
  });
  await step('give the documents that the command line gives for the same system', async () => {
    const { number, revision, date, client, priceList } = offer;
    const written = await offerFilesOf(
      { ...document, offer: { number, revision, date, client, priceList } },
      [...files.keys(), 'offer.json'],
    );
    expect(JSON.parse(String(written.get('offer.json')))).toEqual({ ...offer, state: 'draft' });
    for (const name of ['bill-of-materials.csv', 'bill-of-materials.xlsx', 'section.svg'])
      expect(file(name).equals(written.get(name) ?? Buffer.of()), `${name} to be the same file`).toBe(true);
  });
});
