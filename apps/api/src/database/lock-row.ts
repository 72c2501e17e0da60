import { Prisma } from '../generated/client.js';

/** Until the transaction ends nobody else changes this row; whoever wants to waits. */
export async function lockRow(
  step: Prisma.TransactionClient,
  table: 'Inquiry' | 'System' | 'Offer' | 'CatalogueRevision',
  id: string,
): Promise<void> {
  await step.$queryRaw`SELECT 1 FROM ${Prisma.raw(`"${table}"`)} WHERE "id" = ${id} FOR UPDATE`;
}
