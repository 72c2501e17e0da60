import { execFileSync } from 'node:child_process';
import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { exitCodes } from './exit-code.js';
import { run, runJson } from './testing/run.js';

let folder: string;
let book: string;
let ruleBook: readonly { readonly id: string; readonly title: string }[];

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'rule-book-'));
  book = join(folder, 'book');
  ({ ruleBook } = await import('@flangewise/constraints'));
});

afterAll(async () => {
  await rm(folder, { recursive: true });
});

const hasPoppler = (() => {
  try {
    execFileSync('pdftotext', ['-v'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
})();

const inOneLine = (text: string): string => text.replace(/[\s\u2060]+/gu, ' ');

describe('the rule book', () => {
  it('asks for a folder', async () => {
    const { exit, said } = await run(['rules']);
    expect(exit).toBe(exitCodes.badInput);
    expect(said).toContain('--out');
  });

  it('is written as PDF and JSON, with every rule', async () => {
    const { exit, answer } = await runJson(['rules', '--out', book]);
    expect(exit).toBe(exitCodes.done);
    expect(answer).toMatchObject({ rules: ruleBook.length });
    expect((await readdir(book)).sort()).toEqual(['rule-book.json', 'rule-book.pdf']);
    const document = JSON.parse(await readFile(join(book, 'rule-book.json'), 'utf8')) as {
      rules: { id: string }[];
    };
    expect(document.rules.map(({ id }) => id)).toEqual(ruleBook.map(({ id }) => id));
  }, 120_000);

  it.skipIf(!hasPoppler)(
    'gives every rule a page of its own, with its title and what it rests on (needs poppler-utils)',
    () => {
      const pages = execFileSync('pdftotext', [join(book, 'rule-book.pdf'), '-'], {
        encoding: 'utf8',
        maxBuffer: 1e8,
      }).split('\f');
      const heads = pages.map((page) => inOneLine(page.slice(0, 400)));
      for (const [i, { title, id }] of ruleBook.entries()) {
        const found = heads.filter(
          (head) => head.startsWith(`${String(i + 1)} ${title}`) && head.includes(id),
        );
        expect(found, id).toHaveLength(1);
      }
    },
  );
});
