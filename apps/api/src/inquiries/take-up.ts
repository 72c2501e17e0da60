import { Role } from '../auth/roles.js';
import { lockRow } from '../database/lock-row.js';
import { refuse } from '../errors/refusal.js';
import type { Prisma } from '../generated/client.js';
import { printedNumber } from '../letters.js';
import type { Person } from '../trpc/context.js';

/** Whoever answers for an inquiry; nobody until an engineer takes it up. */
interface Owned {
  readonly ownerId: string | null;
}

/** An engineer changes an inquiry and its systems; a customer changes his own until an engineer has taken it up. */
export const mayChange = ({ role }: Pick<Person, 'role'>, { ownerId }: Owned): boolean =>
  role === Role.applications_engineer || (role === Role.customer && ownerId === null);

type Step = Prisma.TransactionClient;

/**
 * Begins a change of an inquiry or of one of its systems: until the transaction ends nobody else takes it up.
 *
 * @returns who answers for it from now on: the engineer who changes it, where nobody did
 * @throws INQUIRY_TAKEN_UP where a customer is too late
 */
export async function takeUp(step: Step, inquiryId: string, person: Person): Promise<Owned> {
  await lockRow(step, 'Inquiry', inquiryId);
  const row = await step.inquiry.findUniqueOrThrow({
    where: { id: inquiryId },
    select: { number: true, ownerId: true, owner: { select: { name: true } } },
  });
  if (!mayChange(person, row))
    throw refuse('INQUIRY_TAKEN_UP', {
      number: printedNumber(row.number),
      owner: row.owner?.name ?? 'the maker',
    });
  if (row.ownerId !== null || person.role !== Role.applications_engineer) return { ownerId: row.ownerId };
  await step.inquiry.update({ where: { id: inquiryId }, data: { ownerId: person.id } });
  return { ownerId: person.id };
}
