import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import readXlsxFile from 'read-excel-file/node';
import { pdfTexts } from '../../apps/api/src/offers/pdf-text.js';

/** Saves every document of the offer on the page; by file name. */
export async function saveDocuments(page: Page): Promise<ReadonlyMap<string, Buffer>> {
  const links = page.getByRole('link', { name: /, (PDF|XLSX|CSV|SVG)$/ });
  await links.first().waitFor();
  const saved = new Map<string, Buffer>();
  for (const link of await links.all()) {
    const [download] = await Promise.all([page.waitForEvent('download'), link.click()]);
    const name = new URL(download.url()).pathname.split('/').at(-1) ?? '';
    saved.set(name, readFileSync(await download.path()));
  }
  return saved;
}

/** What is printed in a PDF, without any space: how words are set apart is a matter of its lines. */
export const printed = (pdf: Buffer): string => withoutSpaces(pdfTexts(pdf).join('\n'));

export const withoutSpaces = (text: string): string => text.replaceAll(/[\s\u2060]+/g, '');

/**
 * The rows of comma-separated values.
 *
 * @source RFC 4180
 */
export function csvRows(csv: Buffer): readonly (readonly string[])[] {
  const text = csv.toString('utf8').replace(/^\uFEFF/, '');
  const rows: string[][] = [[]];
  for (const [, quoted, bare = '', end] of text.matchAll(/(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n|$)/g)) {
    rows.at(-1)?.push(quoted === undefined ? bare : quoted.replaceAll('""', '"'));
    if (end === '\r\n') rows.push([]);
  }
  return rows.filter((row) => row.length > 1);
}

/** The rows of the first sheet of a workbook, as text. */
export async function xlsxRows(workbook: Buffer): Promise<readonly (readonly string[])[]> {
  const [sheet] = await readXlsxFile(workbook);
  return (sheet?.data ?? []).map((row) => row.map((cell) => (cell === null ? '' : String(cell))));
}
