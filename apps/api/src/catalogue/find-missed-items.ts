import type { SystemInput } from '@flangewise/model';
import type { Prisma } from '../generated/client.js';
import { openInquiries } from '../inquiries/open-inquiries.js';
import { printedNumber } from '../letters.js';
import { chosenItems } from '../systems/chosen-items.js';

/** An item that a draft has no more and that systems of open inquiries have chosen. */
export interface MissedItem {
  readonly item: string;
  readonly usedBy: readonly {
    readonly systemId: string;
    /** Letter of the system within the inquiry. */
    readonly system: string;
    readonly inquiry: string;
    readonly title: string;
  }[];
}

/** Items of one revision that another has not. */
async function goneItems(
  step: Prisma.TransactionClient,
  { from, to }: { readonly from: string; readonly to: string },
): Promise<readonly string[]> {
  const rows = await step.$queryRaw<readonly { id: string }[]>`
    SELECT "id" FROM "CatalogueItem" WHERE "revisionId" = ${from}
    EXCEPT SELECT "id" FROM "CatalogueItem" WHERE "revisionId" = ${to} ORDER BY "id"`;
  return rows.map(({ id }) => id);
}

/** Items that the catalogue in force has, the draft has not, and systems of open inquiries use. */
export async function findMissedItems(
  step: Prisma.TransactionClient,
  between: { readonly from: string; readonly to: string },
): Promise<readonly MissedItem[]> {
  const gone = await goneItems(step, between);
  if (gone.length === 0) return [];
  const systems = await step.system.findMany({
    where: { inquiry: openInquiries },
    orderBy: { createdAt: 'asc' },
    select: { id: true, letter: true, document: true, inquiry: { select: { number: true, title: true } } },
  });
  const used = systems.map(({ id, letter, document, inquiry }) => ({
    chosen: chosenItems(document as unknown as SystemInput),
    by: { systemId: id, system: letter, inquiry: printedNumber(inquiry.number), title: inquiry.title },
  }));
  return gone.flatMap((item) => {
    const usedBy = used.filter(({ chosen }) => chosen.has(item)).map(({ by }) => by);
    return usedBy.length === 0 ? [] : [{ item, usedBy }];
  });
}
