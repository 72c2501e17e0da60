import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { inflateSync } from 'node:zlib';
import { beforeAll, describe, expect, it } from 'vitest';
import { sampleOffer } from './fixtures/sample-offer.js';
import { renderOffer } from './pdf/render-documents.js';
import {
  type OfferDocument,
  type OfferDocumentsView,
  renderOfferDocuments,
} from './render-offer-documents.js';
import { billViewOf } from './views/bill-view.js';
import { offerViewOf } from './views/offer-view.js';
import { specificationViewOf } from './views/specification-view.js';

const viewOf = (): OfferDocumentsView => {
  const sample = sampleOffer();
  return {
    offer: offerViewOf({ ...sample, options: [{ name: 'Second cover', price: '2850.00' }] }),
    specification: specificationViewOf(sample),
    bill: billViewOf(sample.offer, sample.system, sample.items),
    date: '2026-11-24',
  };
};

const view = viewOf();
let documents: readonly OfferDocument[] = [];
const bytesOf = (name: string): Buffer => Buffer.from(documents.find((one) => one.name === name)!.bytes);

const hasPoppler =
  spawnSync('pdftoppm', ['-v']).error === undefined && spawnSync('pdftotext', ['-v']).error === undefined;

const inFolder = <T>(
  name: string,
  use: (file: string, folder: string) => T,
  bytes: Uint8Array = bytesOf(name),
): T => {
  const folder = mkdtempSync(join(tmpdir(), 'documents-'));
  try {
    const file = join(folder, name);
    writeFileSync(file, bytes);
    return use(file, folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
};

const textOf = (name: string, bytes?: Uint8Array): string =>
  inFolder(name, (file) => spawnSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' }).stdout, bytes)
    .replace(/[\u2009\u00a0]/g, ' ')
    .replace(/ +/g, ' ');

interface Picture {
  readonly width: number;
  readonly height: number;
  readonly grey: Buffer;
}

const picturesOf = (name: string): Picture[] =>
  inFolder(name, (file, folder) => {
    spawnSync('pdftoppm', ['-r', '50', '-gray', file, join(folder, 'page')]);
    return readdirSync(folder)
      .filter((one) => one.endsWith('.pgm'))
      .toSorted()
      .map((one) => {
        const bytes = readFileSync(join(folder, one));
        const [, width = '0', height = '0'] =
          /^P5\s(\d+) (\d+)\s255\s/.exec(bytes.toString('latin1', 0, 40)) ?? [];
        return {
          width: Number(width),
          height: Number(height),
          grey: bytes.subarray(bytes.length - Number(width) * Number(height)),
        };
      });
  });

const darkest = (
  { grey, width }: Picture,
  part: { left: number; top: number; right: number; bottom: number },
): number => {
  let least = 255;
  for (let y = part.top; y < part.bottom; y += 1)
    for (let x = part.left; x < part.right; x += 1) least = Math.min(least, grey[y * width + x] ?? 255);
  return least;
};

beforeAll(async () => {
  documents = await renderOfferDocuments(view);
}, 60_000);

describe('documents of an offer', () => {
  it('are six files with their media types', () => {
    expect(documents.map(({ name, mediaType }) => [name, mediaType.split(';')[0]])).toEqual([
      ['offer.pdf', 'application/pdf'],
      ['specification.pdf', 'application/pdf'],
      ['bill-of-materials.csv', 'text/csv'],
      ['bill-of-materials.xlsx', 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet'],
      ['section.svg', 'image/svg+xml'],
      ['cover.svg', 'image/svg+xml'],
    ]);
  });

  it('are the same bytes for the same view', async () => {
    const again = await renderOfferDocuments(view);
    for (const [i, one] of documents.entries())
      expect(Buffer.from(again[i]!.bytes).equals(Buffer.from(one.bytes)), one.name).toBe(true);
  }, 60_000);

  it('stand on A4 and embed Archivo and Source Serif', () => {
    const raw = bytesOf('specification.pdf').toString('latin1');
    expect(raw).toMatch(/\/MediaBox \[0 0 595\.28\d* 841\.89\d*\]/);
    const fonts = [...raw.matchAll(/\/FontName \/[A-Z]{6}\+([\w-]+)/g)].map((match) => match[1]);
    expect(fonts).toEqual(
      expect.arrayContaining(['Archivo-Regular', 'Archivo-SemiBold', 'SourceSerif4-Regular']),
    );
    expect(raw).not.toContain('/Helvetica');
  });

  it('bear a watermark until everything is released, and none after', async () => {
    const pale = /\/ca 0\.1\b/;
    for (const name of ['offer.pdf', 'specification.pdf'])
      expect(bytesOf(name).toString('latin1')).toMatch(pale);
    const released = await renderOffer({ ...view.offer, watermark: null });
    expect(released.toString('latin1')).not.toMatch(pale);
  }, 60_000);

  it('carry the drawing as vector graphics: paths, no picture', () => {
    const raw = bytesOf('specification.pdf');
    expect(raw.includes('/Subtype /Image')).toBe(false);
    const starts = [...raw.toString('latin1').matchAll(/\/Filter \/FlateDecode\n>>\nstream\n/g)].map(
      (match) => match.index + match[0].length,
    );
    const curves = starts.map((at) => {
      try {
        return (inflateSync(raw.subarray(at), { finishFlush: 2 }).toString('latin1').match(/ c\n/g) ?? [])
          .length;
      } catch {
        return 0;
      }
    });
    expect(Math.max(...curves)).toBeGreaterThan(100);
  });

  it.each(['section.svg', 'cover.svg'])('say neither NaN nor undefined in %s', (name) => {
    expect(bytesOf(name).toString('utf8')).not.toMatch(/NaN|undefined|Infinity/);
  });

  it('say in the plan of the cover who sits on each of its ports', () => {
    const svg = bytesOf('cover.svg').toString('utf8');
    const ports = view.specification.drawing.sets.flatMap(({ cover }) => cover?.ports ?? []);
    expect(ports.length).toBeGreaterThan(0);
    for (const { name } of ports) expect(svg).toContain(`>${name}  Ø`);
    expect(svg.match(/>free</g) ?? []).toHaveLength(ports.filter(({ slot }) => slot === null).length);
  });

  it.skipIf(!hasPoppler)('say what an offer must say (needs poppler-utils)', () => {
    const text = textOf('offer.pdf');
    for (const words of [
      'Sundrey Fine Chemicals',
      'M. Castellane',
      '2417-C',
      'Valid until 23 Jan 2027',
      '46 380.00 €',
      'Discount 3 % −1 391.40 €',
      'Total, without tax 44 988.60 €',
      'Options, not in the total',
      'Delivery, 18 weeks',
      'Which flow coefficient has the hydrogen regulator?',
      'does not replace, the work of a qualified pressure-equipment engineer',
    ])
      expect(text).toContain(words);
  });

  it.skipIf(!hasPoppler)(
    'leave out the columns of prices that are not shown (needs poppler-utils)',
    async () => {
      expect(textOf('offer.pdf')).toMatch(/Qty *Each *Together/);
      const positions = view.offer.positions.map((line) => ({ ...line, unitPrice: null, total: null }));
      const text = textOf('offer.pdf', await renderOffer({ ...view.offer, positions }));
      expect(text).toContain('Qty');
      expect(text).not.toMatch(/Each|Together/);
    },
  );

  it.skipIf(!hasPoppler)(
    'say on every compliance and evidence sheet what they do not replace (needs poppler-utils)',
    () => {
      const sheets = textOf('specification.pdf').split('\f').slice(0, -1);
      const proving = sheets.filter((text) =>
        /Compliance summary|Conformity|Evidence|Open points/.test(text.slice(0, 400)),
      );
      expect(proving.length).toBeGreaterThanOrEqual(4);
      for (const text of proving) expect(text).toContain('does not replace');
      for (const [i, text] of sheets.entries())
        expect(text).toContain(`${String(i + 1)}/${String(sheets.length)}`);
    },
  );

  it.skipIf(!hasPoppler)(
    'show gauge pressures, limits to the safe side, Greek and every step (needs poppler-utils)',
    () => {
      const text = textOf('specification.pdf');
      for (const words of [
        '61.5 bar(g)',
        '60 bar(g)',
        '115 °C',
        'Φ',
        'θ',
        '850 × 0.0265 × 80',
        '40 to 160 °C',
        'from memory, unverified',
      ])
        expect(text).toContain(words);
    },
  );

  it.skipIf(!hasPoppler)(
    'name who drew them, and tell the date alone where nobody is named (needs poppler-utils)',
    async () => {
      const { issue, ...sample } = sampleOffer();
      const { author: _, ...unnamed } = issue;
      const letter = await renderOffer(offerViewOf({ ...sample, issue: unnamed }), '2026-11-24');
      expect(textOf('offer.pdf')).toMatch(/Drawn/);
      expect(textOf('offer.pdf', letter)).toMatch(/\bDate\b/);
      expect(textOf('offer.pdf', letter)).not.toMatch(/Drawn/);
    },
  );

  it.skipIf(!hasPoppler)(
    'keep everything inside the frame: 20 mm binding edge, 10 mm elsewhere (needs poppler-utils)',
    () => {
      for (const name of ['offer.pdf', 'specification.pdf'])
        for (const picture of picturesOf(name)) {
          const { width, height } = picture;
          const mm = width / 210;
          const [left, other] = [Math.floor(19 * mm), Math.floor(9 * mm)];
          expect(darkest(picture, { left: 0, top: 0, right: left, bottom: height })).toBeGreaterThan(250);
          expect(
            darkest(picture, { left: width - other, top: 0, right: width, bottom: height }),
          ).toBeGreaterThan(250);
          expect(darkest(picture, { left: 0, top: 0, right: width, bottom: other })).toBeGreaterThan(250);
          expect(
            darkest(picture, { left: 0, top: height - other, right: width, bottom: height }),
          ).toBeGreaterThan(250);
          expect(
            darkest(picture, { left, top: other, right: width - other, bottom: height - other }),
          ).toBeLessThan(120);
        }
    },
    60_000,
  );
});
