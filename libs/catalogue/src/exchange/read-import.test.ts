import type { Catalogue } from '@flangewise/model';
import { describe, expect, test } from 'vitest';
import writeExcelFile from 'write-excel-file/node';
import { itemById } from '../find-items.js';
import { pricedDemoCatalogue as catalogue } from '../prices.js';
import { readImport } from './read-import.js';
import { writeExport } from './write-export.js';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const csv = (...lines: readonly string[]) => readImport('csv', bytes(lines.join('\r\n')), catalogue);
const [eur] = catalogue.priceLists;
const shield = catalogue.items.find(({ slot }) => slot === 'shield')!;
const vessel = catalogue.items.find(({ slot }) => slot === 'vessel')!;
const shieldHead =
  'slot,number,name,families,mass [kg],lead time [d],wetted,max diameter [mm],max height [mm],interlock';
const newShield = 'Shield,SD-9001,Shield of wire,any,12,20,,420,900,yes';

describe('a good file', () => {
  test('adds an item, in the units of its heads', async () => {
    const report = await csv(shieldHead, newShield);
    expect(report.troubles).toEqual([]);
    expect(report).toMatchObject({ rows: 1, added: 1, changed: 0 });
    expect(itemById(report.catalogue!, 'SD-9001')).toMatchObject({
      slot: 'shield',
      massKg: 12,
      maxDiameterM: 0.42,
      maxHeightM: 0.9,
      interlock: true,
      wetted: [],
      portsM: [],
      life: 'current',
    });
    expect(report.catalogue!.items).toHaveLength(catalogue.items.length + 1);
  });

  test('changes what it has a column for and leaves the rest, items that it does not name too', async () => {
    const report = await csv('number,lead time [d]', `${shield.id},77`);
    expect(report).toMatchObject({ rows: 1, added: 0, changed: 1, unchanged: 0 });
    expect(itemById(report.catalogue!, shield.id)).toEqual({ ...shield, leadTimeDays: 77 });
    expect(report.catalogue!.items).toEqual(
      catalogue.items.map((item) => (item.id === shield.id ? { ...shield, leadTimeDays: 77 } : item)),
    );
  });

  test('takes other units than an export writes', async () => {
    const report = await csv('number,max diameter [in],max height [mm]', `${shield.id},10,35 in`);
    expect(report.troubles).toEqual([]);
    expect(itemById(report.catalogue!, shield.id)).toMatchObject({ maxDiameterM: 0.254, maxHeightM: 0.889 });
  });

  test('is read with semicolons and decimal commas, with a byte order mark, and with line ends of any system', async () => {
    const report = await readImport(
      'csv',
      bytes(`\uFEFFnumber;max diameter [mm];mass [kg]\n${shield.id};412,125;12,5\n`),
      catalogue,
    );
    expect(report.troubles).toEqual([]);
    expect(itemById(report.catalogue!, shield.id)).toMatchObject({ maxDiameterM: 0.412125, massKg: 12.5 });
  });

  test('changes and takes out prices', async () => {
    const head = `number,price ${eur!.id} [EUR]`;
    const report = await csv(head, `${shield.id},1234.50`, `${vessel.id},`);
    expect(report).toMatchObject({ changed: 2, added: 0 });
    const [list] = report.catalogue!.priceLists;
    expect(list!.prices[shield.id]).toBe('1234.50');
    expect(list!.prices).not.toHaveProperty(vessel.id);
    expect(report.catalogue!.priceLists[1]).toEqual(catalogue.priceLists[1]);
  });
});

describe('a bad file', () => {
  const only = async (report: ReturnType<typeof csv>) => {
    const { troubles, catalogue: result } = await report;
    expect(result).toBeUndefined();
    expect(troubles).toHaveLength(1);
    return troubles[0]!;
  };

  test('with one trouble changes nothing and names line, column, value and what is allowed', async () => {
    expect(await only(csv('number,max diameter [mm],mass [kg]', `${shield.id},wide,12`))).toEqual({
      line: 2,
      column: 'max diameter [mm]',
      given: 'wide',
      message: 'it is no number; give a number in mm, at least 0',
    });
  });

  test.each([
    ['text for a number', 'mass [kg]', 'heavy', /no number; give a number in kg, at least 0/],
    ['a number below its bound', 'mass [kg]', '-3', /past what is allowed; give a number in kg, at least 0/],
    ['a comma that can be read in two ways', 'mass [kg]', '"1,250"', /two ways, 1\.25 or 1250/],
    ['a unit that does not fit', 'mass [kg]', '3 mm', /give a number in kg/],
    ['a fraction of a day', 'lead time [d]', '3.5', /not whole; give a whole number in d, at least 0/],
    ['neither yes nor no', 'interlock', 'perhaps', /give yes or no/],
    ['a word that is no choice', 'life', 'retired', /give one of introduced, current/],
    ['nothing where something must be', 'name', '', /give a text/],
    ['a number that is none of an item', 'number', 'shield 1', /a text like VS-1002/],
  ])('tells %s', async (_, column, given, message) => {
    const head = column === 'number' ? 'number,slot' : `number,${column}`;
    const line = column === 'number' ? `${given},shield` : `${shield.id},${given}`;
    const trouble = await only(csv(head, line));
    expect(trouble).toMatchObject({ line: 2, column });
    expect(trouble.message).toMatch(message);
  });

  test('tells a column that there is none of, and the one that was meant', async () => {
    const trouble = await only(csv('number,max diametre [mm]', `${shield.id},3`));
    expect(trouble).toMatchObject({ line: 1, column: 'max diametre [mm]' });
    expect(trouble.message).toMatch(/was "max diameter" meant/);
  });

  test('goes on below a head that cannot be read, to what else is wrong', async () => {
    const { troubles } = await csv('number,mass [kgs],lead time [d]', `${shield.id},3,soon`);
    expect(troubles.map(({ line, column }) => [line, column])).toEqual([
      [1, 'mass [kgs]'],
      [2, 'lead time [d]'],
    ]);
  });

  test('tells a head without its unit', async () => {
    const trouble = await only(csv('number,max diameter', `${shield.id},3`));
    expect(trouble).toMatchObject({ line: 1, message: 'write the head with its unit: "max diameter [mm]"' });
  });

  test('tells a pressure that does not say gauge', async () => {
    const trouble = await only(csv('number,rating max pressure [bar]', `${vessel.id},3`));
    expect(trouble.message).toContain('rating max pressure [bar(g)]');
  });

  test('tells a column of another slot where it is written', async () => {
    const trouble = await only(csv('number,max diameter [mm],turns', `${shield.id},300,4`));
    expect(trouble).toMatchObject({ line: 2, column: 'turns', given: '4' });
    expect(trouble.message).toMatch(/Shield have no such field/);
  });

  test('tells columns that a new item needs, once each', async () => {
    const { troubles } = await csv(
      'slot,number,name,families',
      'Shield,SD-9001,Shield,any',
      'Shield,SD-9002,Shield,any',
    );
    expect(troubles.map(({ column }) => column)).toEqual([
      'mass [kg]',
      'lead time [d]',
      'max diameter [mm]',
      'max height [mm]',
      'interlock',
    ]);
    for (const { line, message } of troubles) {
      expect(line).toBe(2);
      expect(message).toMatch(/is missing, and a new item of the slot Shield needs it/);
    }
  });

  test('tells a file without item numbers', async () => {
    expect(await only(csv('name,mass [kg]', 'Shield,3'))).toMatchObject({ line: 1, column: 'number' });
  });

  test('tells a number that stands twice, with the first line', async () => {
    const trouble = await only(csv('number,lead time [d]', `${shield.id},7`, `${shield.id},8`));
    expect(trouble).toMatchObject({ line: 3, column: 'number', given: shield.id });
    expect(trouble.message).toMatch(/line 2 already/);
  });

  test('tells an item that would leave its slot, and a slot that there is none of', async () => {
    const moved = await only(csv('slot,number', `Vessel,${shield.id}`));
    expect(moved).toMatchObject({ line: 2, column: 'slot' });
    expect(moved.message).toMatch(/stands in the slot Shield and stays there/);
    const unknown = await only(csv('slot,number', 'Shiled,SD-9001'));
    expect(unknown.message).toMatch(/was "Shield" meant/);
  });

  test('counts lines of the file, those of texts with line ends included', async () => {
    const trouble = await only(
      csv('number,name,mass [kg]', `${vessel.id},"two\r\nlines",4`, `${shield.id},Shield,x`),
    );
    expect(trouble).toMatchObject({ line: 4, column: 'mass [kg]', given: 'x' });
  });

  test.each([
    ['nothing', ''],
    ['blanks alone', ' \r\n \r\n'],
    ['a quotation mark that does not end', `number,name\r\n${'VS-1001'},"open`],
  ])('of %s is told', async (_, text) => {
    const { given } = await only(readImport('csv', bytes(text), catalogue));
    expect(given).not.toBe('');
  });

  test('of bytes that are no text is told', async () => {
    const trouble = await only(readImport('csv', new Uint8Array([110, 0xe4, 0xff, 0x80]), catalogue));
    expect(trouble.message).toMatch(/UTF-8/);
  });

  test('of very many troubles lists the first and counts the rest', async () => {
    const lines = Array.from({ length: 900 }, (_, i) => `SD-${String(1000 + i)},Shield,much`);
    const { troubles, furtherTroubles } = await csv('number,slot,mass [kg]', ...lines);
    expect(troubles).toHaveLength(200);
    expect(furtherTroubles).toBeGreaterThan(600);
  });

  test('with a price that is none, or for an item that there is none of, is told', async () => {
    const trouble = await only(csv(`number,price ${eur!.id} [EUR]`, `${shield.id},12.345`));
    expect(trouble.message).toMatch(/amount in EUR of at least 0/);
    const list = await only(csv('number,price 1999 [EUR]', `${shield.id},12`));
    expect(list.message).toContain(`price ${eur!.id} [EUR]`);
  });
});

describe('a workbook', () => {
  const workbook = async (sheet: string, rows: readonly (readonly (string | number | Date | null)[])[]) => {
    const data = rows.map((row) =>
      row.map((value) =>
        value === null
          ? null
          : value instanceof Date
            ? { value, type: Date, format: 'yyyy-mm-dd' }
            : typeof value === 'number'
              ? { value, type: Number }
              : { value, type: String },
      ),
    );
    return readImport('xlsx', await writeExcelFile(data, { sheet }).toBuffer(), catalogue);
  };

  test('may hold one sheet, with numbers as text', async () => {
    const report = await workbook('Shield', [
      ['number', 'max diameter [mm]', 'mass [kg]'],
      [shield.id, '412.5', 13],
    ]);
    expect(report.troubles).toEqual([]);
    expect(itemById(report.catalogue!, shield.id)).toMatchObject({ maxDiameterM: 0.4125, massKg: 13 });
  });

  test('names sheet, line and column of a trouble', async () => {
    const report = await workbook('Shield', [
      ['number', 'mass [kg]'],
      [shield.id, 4],
      [null, null],
      ['SD-1', 4],
    ]);
    expect(report.catalogue).toBeUndefined();
    expect(report.troubles[0]).toMatchObject({ sheet: 'Shield', line: 4, column: 'number', given: 'SD-1' });
  });

  test('with a sheet that there is none of, or of another slot, is told', async () => {
    const unknown = await workbook('Sheild', [['number'], [shield.id]]);
    expect(unknown.troubles).toMatchObject([{ sheet: 'Sheild', line: 1 }]);
    expect(unknown.troubles[0]!.message).toMatch(/was "Shield" meant/);
    const other = await workbook('Vessel', [['number'], [shield.id]]);
    expect(other.troubles[0]!.message).toMatch(/stands in the slot Shield and stays there/);
  });

  test('of prices alone changes prices, of items that there are', async () => {
    const good = await workbook('Prices', [
      ['number', `price ${eur!.id} [EUR]`],
      [shield.id, 99],
    ]);
    expect(good).toMatchObject({ changed: 1 });
    expect(good.catalogue!.priceLists[0]!.prices[shield.id]).toBe('99');
    const bad = await workbook('Prices', [
      ['number', `price ${eur!.id} [EUR]`],
      ['SD-9999', 99],
    ]);
    expect(bad.troubles[0]).toMatchObject({ sheet: 'Prices', line: 2, column: 'number' });
  });

  test.each([
    ['nothing', new Uint8Array()],
    ['text', bytes('number,name')],
  ])('of %s is told', async (_, content) => {
    const report = await readImport('xlsx', content, catalogue);
    expect(report.catalogue).toBeUndefined();
    expect(report.troubles).toHaveLength(1);
  });
});

describe('a document', () => {
  const read = (document: unknown) => readImport('json', bytes(JSON.stringify(document, null, 2)), catalogue);

  test('names line and path of a trouble', async () => {
    const written = new TextDecoder().decode(await writeExport('json', catalogue));
    const broken = written.replace(`"id": "${shield.id}"`, '"id": "shield"');
    const report = await readImport('json', bytes(broken), catalogue);
    const line = broken.split('\n').findIndex((one) => one.includes('"id": "shield"')) + 1;
    const index = catalogue.items.indexOf(shield);
    expect(report.catalogue).toBeUndefined();
    expect(report.troubles[0]).toMatchObject({
      line,
      column: `items[${String(index)}].id`,
      given: '"shield"',
    });
  });

  test('that breaks off is told with its line', async () => {
    const report = await readImport('json', bytes('{\n  "revision": "x",\n  "items": [\n'), catalogue);
    expect(report.troubles).toHaveLength(1);
    expect(report.troubles[0]!.line).toBeGreaterThanOrEqual(3);
  });

  test('takes nothing out, and keeps revision and maker', async () => {
    const part: Catalogue = {
      ...catalogue,
      revision: 'other',
      maker: 'Other',
      items: [{ ...shield, name: 'Other shield' }],
      priceLists: [{ ...eur!, validUntil: '2027-12-31', prices: { [shield.id]: '5' } }],
    };
    const report = await read(part);
    expect(report).toMatchObject({ rows: 1, changed: 1, added: 0 });
    const result = report.catalogue!;
    expect([result.revision, result.maker]).toEqual([catalogue.revision, catalogue.maker]);
    expect(result.items).toHaveLength(catalogue.items.length);
    expect(result.priceLists[0]).toEqual({
      ...eur,
      validUntil: '2027-12-31',
      prices: { ...eur!.prices, [shield.id]: '5' },
    });
  });
});
