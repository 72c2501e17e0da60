import type { InquiryInput, SolveAnswer } from '@flangewise/model';
import { seesPrices, visibleInquiries } from '../auth/visible.js';
import { refuse } from '../errors/refusal.js';
import type { Desk } from '../trpc/context.js';

/** A search that knows no price proves nothing about the cheapest; its order and its words rest on delivery and margin. */
const withoutPrices = (answer: SolveAnswer): SolveAnswer => ({ ...answer, cheapestProved: false });

/** Systems that answer an inquiry. For a customer they are searched and ranked without any price. */
export async function solveInquiry(
  { database, workshop, person }: Desk,
  { inquiryId, most }: { readonly inquiryId: string; readonly most?: number | undefined },
): Promise<SolveAnswer> {
  const row = await database.inquiry.findFirst({
    where: { id: inquiryId, ...visibleInquiries(person) },
    select: { document: true },
  });
  if (row === null) throw refuse('NOT_FOUND', { what: 'inquiry', field: 'inquiryId', given: inquiryId });
  const inquiry = row.document as unknown as InquiryInput;
  const priceList = seesPrices(person) ? workshop.priceListFor({ inquiry }).id : null;
  const answer = await workshop.run('solve', { inquiry, most, priceList });
  return priceList === null ? withoutPrices(answer) : answer;
}
