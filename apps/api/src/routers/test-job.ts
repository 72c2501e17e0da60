import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { InquiryInput, SystemInput } from '@flangewise/model';
import type { TestProduct } from '../http/test-product.js';
import { checkout } from '../start/checkout.js';

/** An inquiry of the acceptance tests, for a client of the demo. */
export function testInquiry(name: string, client?: string): InquiryInput {
  const file = join(checkout, 'tests', 'acceptance', 'inquiries', name);
  const inquiry = JSON.parse(readFileSync(file, 'utf8')) as InquiryInput;
  return client === undefined ? inquiry : { ...inquiry, client };
}

export const clientNames = { sundrey: 'Sundrey Fine Chemicals', kelmoor: 'Kelmoor Polymers' } as const;

/** One that is solved quickly. */
export const quickInquiry = '04-screening.json';

export interface TestJob {
  readonly inquiryId: string;
  readonly systemId: string;
  readonly system: SystemInput;
}

/** An inquiry with the first system that answers it, as an engineer enters and saves them. */
export async function startJob(
  { ask }: TestProduct,
  { inquiry = quickInquiry, client }: { readonly inquiry?: string; readonly client?: string } = {},
): Promise<TestJob> {
  const document = testInquiry(inquiry, client);
  const { id: inquiryId } = await ask('engineer', 'inquiries.create', { document });
  const { candidates } = await ask('engineer', 'systems.solve', { inquiryId, most: 1 });
  const { system } = candidates[0];
  const { id: systemId } = await ask('engineer', 'systems.create', { inquiryId, system });
  return { inquiryId, systemId, system };
}

/** Offers a system. */
export const makeTestOffer = async (
  { ask }: TestProduct,
  systemId: string,
  terms: { readonly discountPercent?: string } = {},
): Promise<string> => (await ask('engineer', 'offers.create', { systemId, date: '2026-11-24', ...terms })).id;

/**
 * Takes away what the assessment has against the newest revision: whether a system is proved is a matter of the rules and
 * tested with them; here it is in the way.
 */
export async function unblock({ database }: TestProduct, offerId: string): Promise<void> {
  const { id } = await database.offerRevision.findFirstOrThrow({
    where: { offerId },
    orderBy: { number: 'desc' },
  });
  const none = { always: [], discount: [], special: [] };
  await database.offerRevision.update({ where: { id }, data: { blocking: none } });
}

/** An offer that was sent. */
export async function sendTestOffer(product: TestProduct, systemId: string): Promise<string> {
  const id = await makeTestOffer(product, systemId);
  await unblock(product, id);
  await product.ask('engineer', 'offers.send', { id });
  return id;
}
