import { type Catalogue, type Item, itemFieldsOf, leavesOf, slotNames } from '@flangewise/model';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pricedDemoCatalogue as catalogue } from '../prices.js';
import { differenceOf } from './difference-of.js';
import { exchangeFormats } from './exchange-format.js';
import { columnsOf } from './item-columns.js';
import { readImport } from './read-import.js';
import { writeExport } from './write-export.js';

const emptied: Catalogue = {
  ...catalogue,
  items: [],
  priceLists: catalogue.priceLists.map((list) => ({ ...list, prices: {} })),
};

const roundTrip = async (format: (typeof exchangeFormats)[number], given: Catalogue, into: Catalogue) =>
  readImport(format, await writeExport(format, given), into);

describe.each(exchangeFormats)('a catalogue as %s', (format) => {
  test('comes back as it went, into a catalogue that has nothing yet', async () => {
    const report = await roundTrip(format, catalogue, emptied);
    expect(report.troubles).toEqual([]);
    expect(report).toMatchObject({ rows: catalogue.items.length, added: catalogue.items.length, changed: 0 });
    expect(report.catalogue).toEqual(catalogue);
  }, 60_000);

  test('changes nothing where it stands already', async () => {
    const report = await roundTrip(format, catalogue, catalogue);
    expect(report).toMatchObject({ added: 0, changed: 0, unchanged: catalogue.items.length });
    expect(report.catalogue).toEqual(catalogue);
    expect(differenceOf(catalogue, report.catalogue ?? emptied)).toMatchObject({
      added: [],
      removed: [],
      changed: [],
      prices: [],
      priceLists: [],
      tables: [],
    });
  }, 60_000);
});

/** Values that numbers of the range do not have: all digits, very small, very large. */
const anyHeld = fc.double({ min: 0, max: 1e9, noNaN: true }).filter((value) => !Object.is(value, -0));
/** Texts that the format of workbooks has another meaning for: escapes, and names that every object of its writer has. */
const notInWorkbooks =
  /_x[\dA-F]{4}_|^(constructor|hasOwnProperty|isPrototypeOf|propertyIsEnumerable|to\w*String|valueOf|__\w+__)$/i;
const anyText = fc
  .string({ minLength: 1, maxLength: 24 })
  .map((text) => text.replaceAll(/[\u0000-\u001f\u007f-\u009f\ud800-\udfff\ufffe\uffff]/g, '').trim())
  .filter((text) => text !== '' && !notInWorkbooks.test(text));

/** An item with other texts and numbers, as its schema allows them. */
const changedItem = (item: Item) =>
  fc
    .record({
      name: anyText,
      massKg: anyHeld,
      families: fc.array(anyText, { minLength: 1, maxLength: 4 }),
      wetted: fc.array(anyText, { maxLength: 3 }),
      portsM: fc.array(anyHeld, { maxLength: 3 }),
      reachM: fc.option(anyHeld, { nil: undefined }),
      rating: fc.option(
        fc.record({
          maxPressurePaGauge: anyHeld,
          minTemperatureK: anyHeld,
          maxTemperatureK: anyHeld,
          vacuum: fc.boolean(),
        }),
        { nil: undefined },
      ),
    })
    .map((changes) => {
      const changed = { ...item, ...changes };
      return Object.fromEntries(
        Object.entries(changed).filter(([, value]) => value !== undefined),
      ) as unknown as Item;
    });

const samples: readonly Item[] = slotNames.flatMap((slot) =>
  catalogue.items.filter((item) => item.slot === slot).slice(0, 2),
);

describe('whatever items say', () => {
  test.each(['csv', 'xlsx'] as const)(
    '%s gives it back to the last digit',
    async (format) => {
      await fc.assert(
        fc.asyncProperty(fc.noShrink(fc.tuple(...samples.map(changedItem))), async (items) => {
          const given = { ...emptied, items };
          const report = await roundTrip(format, given, emptied);
          expect(report.troubles).toEqual([]);
          expect(report.catalogue?.items).toEqual(items);
        }),
        { numRuns: 4 },
      );
    },
    120_000,
  );
});

describe('columns', () => {
  test.each(slotNames)('of %s have heads of their own, with the unit where there is one', (slot) => {
    const columns = columnsOf(
      slot,
      catalogue.items.filter((item) => item.slot === slot),
    );
    const heads = columns.map(({ head }) => head);
    expect(new Set(heads).size).toBe(heads.length);
    expect(heads).toContain('number');
    for (const { head, field } of columns) {
      expect(head, head).toMatch(/^[a-z][\w ]*( \[.+\])?$/i);
      expect(head.includes('['), head).toBe(field.unit !== undefined);
    }
  });

  test('name every field of every item', () => {
    for (const slot of slotNames) {
      const items = catalogue.items.filter((item) => item.slot === slot);
      const paths = new Set(['slot', ...columnsOf(slot, items).map(({ path }) => path)]);
      const unnamed = items.flatMap((item) => [...leavesOf(item).keys()].filter((path) => !paths.has(path)));
      expect(unnamed, slot).toEqual([]);
    }
  });

  test('no field has to be written as a document', () => {
    for (const slot of slotNames)
      for (const field of itemFieldsOf(slot))
        expect(field.form, `${slot} ${field.path}`).not.toBe('document');
  });
});
