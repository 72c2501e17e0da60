import type { InquiryInput } from '@flangewise/model';
import { refuse } from '../errors/refusal.js';
import type { Prisma } from '../generated/client.js';
import type { Person } from '../trpc/context.js';

const tidy = (name: string): string => name.trim().replace(/\s+/g, ' ');

/**
 * The client that an inquiry is for, entered if new: for the maker's people the one that the document names, for a customer his
 * own company, which the document need not name.
 *
 * @returns null where nobody is named yet
 */
export async function clientOfInquiry(
  step: Prisma.TransactionClient,
  { document, person }: { readonly document: InquiryInput; readonly person: Person },
): Promise<string | null> {
  const name = tidy(document.client ?? '');
  if (person.clientId !== null) {
    const own = await step.client.findUniqueOrThrow({ where: { id: person.clientId } });
    if (name === '' || name.toLowerCase() === own.name.toLowerCase()) return own.id;
    const field = 'document.client';
    const problem = `allowed is your own company, ${own.name}`;
    throw refuse(
      'INPUT_NOT_VALID',
      { problems: `${field}: "${name}" given; ${problem}` },
      { fields: [{ field, given: name, problem }] },
    );
  }
  if (name === '') return null;
  const known = await step.client.findFirst({ where: { name: { equals: name, mode: 'insensitive' } } });
  return (known ?? (await step.client.upsert({ where: { name }, create: { name }, update: {} }))).id;
}
