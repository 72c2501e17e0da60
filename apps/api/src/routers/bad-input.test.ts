import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startProduct } from '../http/test-product.js';
import { quickInquiry, startJob, type TestJob, testInquiry } from './test-job.js';

const product = await startProduct(afterAll);
const { ask, call, database } = product;
let job: TestJob;
beforeAll(async () => {
  job = await startJob(product);
});

const inquiry = testInquiry(quickInquiry);

describe('an inquiry', () => {
  it.each([
    [
      { ...inquiry, process: { pressure: { highest: '60 furlong' } } },
      'document.process.pressure.highest',
      '"60 furlong"',
      /bar/,
    ],
    [
      { ...inquiry, sets: [{ batchVolume: '90000 L' }] },
      'document.sets[0].batchVolume',
      '"90000 L"',
      /10 000 L/,
    ],
    [{ ...inquiry, site: { zone: '3' } }, 'document.site.zone', '"3"', /"0"|none/],
    [{ ...inquiry, colour: 'red' }, 'document.colour', '"red"', /no such field; allowed are title, client/],
    [{ ...inquiry, title: '' }, 'document.title', '""', />=1/],
    [{ ...inquiry, title: 'a\u0000b' }, 'document.title', 'a character that cannot be stored', /NUL/],
    [{ ...inquiry, title: 'a\ud800b' }, 'document.title', 'a character that cannot be stored', /surrogate/],
    [null, 'document', 'null', /object/],
    [undefined, 'document', 'nothing', /object/],
    ['{}', 'document', '"{}"', /object/],
  ])('names field, value and what is allowed (%#)', async (document, field, given, allowed) => {
    const before = await database.inquiry.count();
    const { status, error } = await call('engineer', 'inquiries.create', { document });
    expect([status, error?.data.reason]).toEqual([400, 'INPUT_NOT_VALID']);
    const trouble = error?.data.fields?.find((one) => one.field === field);
    expect(trouble?.problem).toMatch(allowed);
    if (given !== undefined) expect(trouble?.given).toBe(given);
    expect(await database.inquiry.count()).toBe(before);
  });

  it('is checked without losing what is wrong with it', async () => {
    const bad = { ...inquiry, process: { pressure: { highest: '60 furlong' } } };
    const { troubles, openPoints } = await ask('engineer', 'inquiries.check', { document: bad });
    expect(troubles).toEqual([
      { path: 'process.pressure.highest', given: '"60 furlong"', message: expect.stringContaining('bar') },
    ]);
    expect(openPoints).toEqual([]);
    const good = await ask('engineer', 'inquiries.check', { document: inquiry });
    expect(good.troubles).toEqual([]);
    expect(good.openPoints.length).toBeGreaterThan(0);
  });

  it('keeps what others saved meanwhile, where the version that was seen is given', async () => {
    const { id } = await ask('engineer', 'inquiries.create', { document: inquiry });
    await ask('engineer', 'inquiries.update', { id, document: { ...inquiry, title: 'B' }, version: 1 });
    const late = await call('engineer', 'inquiries.update', { id, document: inquiry, version: 1 });
    expect([late.status, late.error?.data.reason]).toEqual([409, 'CHANGED_MEANWHILE']);
    expect((await ask('engineer', 'inquiries.get', { id })).title).toBe('B');
  });
});

describe('a system', () => {
  const withVessel = (vessel: string | null) => ({
    ...job.system,
    sets: [{ ...job.system.sets?.[0], choices: { ...job.system.sets?.[0]?.choices, vessel } }],
  });

  it.each([
    ['VS-9999', /no such item/],
    ['CL-1001', /belongs to/],
    [null, /may not be empty/],
  ])('names the choice %s that the catalogue does not serve, and what it has', async (given, why) => {
    const before = await database.system.findUniqueOrThrow({ where: { id: job.systemId } });
    for (const [path, input] of [
      ['systems.create', { inquiryId: job.inquiryId, system: withVessel(given) }],
      ['systems.save', { id: job.systemId, document: withVessel(given), version: before.version }],
    ] as const) {
      const { status, error } = await call('engineer', path, input);
      expect([status, error?.data.reason]).toEqual([422, 'CHOICES_NOT_IN_CATALOGUE']);
      expect(error?.data.fields).toEqual([
        { field: 'sets[0].vessel', given: String(given), problem: expect.stringMatching(why) },
      ]);
      expect(error?.data.fields?.[0]?.problem).toMatch(/Vessel may be VS-\d+, .* and \d+ more/);
    }
    expect(await database.system.findUniqueOrThrow({ where: { id: job.systemId } })).toEqual(before);
  });

  it('that names an item which the catalogue has no more can be read, and says so; it is neither frozen nor offered', async () => {
    const { id } = await ask('engineer', 'systems.create', { inquiryId: job.inquiryId, system: job.system });
    await database.system.update({ where: { id }, data: { document: { ...withVessel('VS-9999') } } });
    const { unknownItems, assessment } = await ask('engineer', 'systems.get', { id });
    expect(unknownItems).toMatchObject([{ field: 'sets[0].vessel', given: 'VS-9999' }]);
    expect(assessment.releasable).toBe(false);
    const frozen = await call('engineer', 'systems.freeze', { id });
    expect(frozen.error?.data.reason).toBe('CHOICES_NOT_IN_CATALOGUE');
    const offered = await call('engineer', 'offers.create', { systemId: id, date: '2026-11-24' });
    expect([offered.status, offered.error?.data.reason]).toEqual([422, 'CHOICES_NOT_IN_CATALOGUE']);
  });

  it('refuses a special of a material that none is made of', async () => {
    const specials = [{ volumeL: 2, pressurePaGauge: 1e7, maxTemperatureK: 400, material: 'cheese' }];
    const { status, error } = await call('engineer', 'systems.create', {
      inquiryId: job.inquiryId,
      system: { ...job.system, specials },
    });
    expect([status, error?.data.reason]).toEqual([422, 'SPECIAL_NOT_POSSIBLE']);
    expect(error?.data.fields).toMatchObject([{ field: 'specials[0].material', given: 'cheese' }]);
  });
});

describe('an id', () => {
  it.each([
    ['inquiries.get', 'id'],
    ['systems.get', 'id'],
    ['systems.freeze', 'id'],
    ['systems.solve', 'inquiryId'],
    ['evidence.get', 'systemId'],
    ['offers.get', 'id'],
    ['offers.revise', 'id'],
    ['offers.send', 'id'],
    ['catalogue.getRevision', 'id'],
    ['catalogue.audit', 'id'],
    ['catalogue.checkDraft', 'id'],
  ])('of nothing is told apart from one that is none: %s', async (path, field) => {
    const unknown = await call('engineer', path, { [field]: 'no-such-row' });
    expect([unknown.status, unknown.error?.data.reason]).toEqual([404, 'NOT_FOUND']);
    expect(unknown.error?.message).toContain(`${field} no-such-row`);
    for (const id of ["'; --", 'x'.repeat(65), 'a\u0000', 7, null]) {
      const { status, error } = await call('engineer', path, { [field]: id });
      expect([status, error?.data.reason, error?.data.fields?.[0]?.field]).toEqual([
        400,
        'INPUT_NOT_VALID',
        field,
      ]);
    }
  });
});

describe('a calculation', () => {
  it('gives every step, or the field with what is allowed', async () => {
    const run = (inputs: object, id = 'relief.criticalPressureRatio') =>
      call('keeper', 'calculations.run', { id, inputs });
    const good = await run({ isentropicExponent: 1.4 });
    // Perry's handbook, critical pressure ratio of a diatomic gas: 0.528.
    expect(good.data.outputs.criticalRatio).toBeCloseTo(0.528, 3);
    expect(good.data.steps.length).toBeGreaterThan(0);
    const bad = await run({ isentropicExponent: -1 });
    expect([bad.status, bad.error?.data.reason]).toEqual([422, 'CALCULATION_NOT_POSSIBLE']);
    expect(bad.error?.data.fields).toMatchObject([{ field: 'inputs.isentropicExponent', given: '-1' }]);
    const none = await run({ foo: 1 }, 'closure.endForce');
    expect(none.error?.data.fields).toEqual([
      {
        field: 'inputs.gasketDiameterM',
        given: 'nothing',
        problem: expect.stringMatching(/number > 0 \[m\]$/),
      },
      {
        field: 'inputs.pressurePaGauge',
        given: 'nothing',
        problem: expect.stringMatching(/number ≥ 0 \[Pa\]$/),
      },
      {
        field: 'inputs.foo',
        given: '1',
        problem: expect.stringMatching(/allowed are gasketDiameterM, press/),
      },
    ]);
    const unknown = await run({}, 'relief.nothing');
    expect([unknown.status, unknown.error?.data.reason]).toEqual([404, 'NOT_FOUND']);
  });

  it('is listed with the schema of its inputs', async () => {
    const list = await ask('sundrey', 'calculations.list');
    const ratio = list.find((one: { id: string }) => one.id === 'relief.criticalPressureRatio');
    expect(Object.keys(ratio.inputs.properties)).toContain('isentropicExponent');
  });
});
