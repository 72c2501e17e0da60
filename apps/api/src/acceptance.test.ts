import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { InquiryInput } from '@flangewise/model';
import { afterAll, describe, expect, it, vi } from 'vitest';
import { startProduct } from './http/test-product.js';
import { checkout } from './start/checkout.js';

vi.setConfig({ testTimeout: 60_000 });

const product = await startProduct(afterAll);
const folder = join(checkout, 'tests', 'acceptance', 'inquiries');
const inquiries = readdirSync(folder).filter((name) => name.endsWith('.json'));

/** How each document begins. */
const beginnings: Readonly<Record<string, string>> = {
  'offer.pdf': '%PDF-',
  'specification.pdf': '%PDF-',
  'bill-of-materials.csv': '\u00ef\u00bb\u00bf' /* byte-order mark, as latin1 */,
  'bill-of-materials.xlsx': 'PK',
  'section.svg': '<?xml',
  'cover.svg': '<?xml',
};

const readInquiry = (name: string): InquiryInput =>
  JSON.parse(readFileSync(join(folder, name), 'utf8')) as InquiryInput;

it('has inquiries to try', () => {
  expect(inquiries.length).toBeGreaterThanOrEqual(10);
});

describe.each(inquiries)('inquiry %s', (name) => {
  it('leads from inquiry to documents', async () => {
    const { ask, get } = product;
    const document = readInquiry(name);
    const { id: inquiryId } = await ask('engineer', 'inquiries.create', { document });
    const inquiry = await ask('engineer', 'inquiries.get', { id: inquiryId });
    expect(inquiry.document).toEqual(document);

    const answer = await ask('engineer', 'systems.solve', { inquiryId, most: 2 });
    const first = answer.candidates[0];
    if (first === undefined) {
      expect(answer.result).toBe('impossible');
      expect(answer.refusals.length).toBeGreaterThan(0);
      return;
    }
    const { id } = await ask('engineer', 'systems.create', { inquiryId, system: first.system });
    const system = await ask('engineer', 'systems.get', { id });
    expect(system.document.sets).toEqual(first.system.sets);
    expect(system.assessment.status).toBe(first.status);
    const saved = await ask('engineer', 'systems.save', { id, document: system.document, version: 1 });
    expect(saved.version).toBe(2);
    expect(saved.assessment).toEqual(system.assessment);

    const made = await ask('engineer', 'offers.create', {
      systemId: id,
      date: '2026-11-24',
      taxPercent: '0',
    });
    const offer = await ask('engineer', 'offers.get', { id: made.id });
    expect(offer.offer.listTotal).toBe(first.price);
    expect(offer.documents.map((one: { name: string }) => one.name)).toEqual(Object.keys(beginnings).sort());
    for (const { name: file, mediaType, bytes } of offer.documents) {
      const download = await get('engineer', `/api/offers/${made.id}/documents/${file}`);
      expect(download.headers['content-type']).toBe(mediaType);
      expect(download.rawPayload.byteLength).toBe(bytes);
      expect(download.rawPayload.toString('latin1').startsWith(beginnings[file] ?? '?')).toBe(true);
    }
    const sent = await product.call('engineer', 'offers.send', { id: made.id });
    expect([sent.status, sent.error?.data.reason]).toEqual(
      offer.blocking.length === 0 ? [200, undefined] : [409, 'OFFER_BLOCKED'],
    );
  });
});
