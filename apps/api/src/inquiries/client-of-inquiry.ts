import type { InquiryInput } from '@flangewise/model';
import { refuse } from '../errors/refusal.js';
import type { Prisma } from '../generated/client.js';
import type { Person } from '../trpc/context.js';

/** The client's name as an inquiry has it, without needless blanks; empty where it names none. */
export const clientNameOf = ({ client = '' }: InquiryInput): string => client.trim().replace(/\s+/g, ' ');

/** The client of this name, whatever its case and blanks. */
async function findByName(step: Prisma.TransactionClient, name: string): Promise<string | undefined> {
  const rows = await step.$queryRaw<readonly { id: string }[]>`
    SELECT "id" FROM "Client" WHERE folded_name("name") = folded_name(${name})`;
  return rows[0]?.id;
}

/** The same, entered if new. Whoever enters it at the same moment enters one client with us. */
async function enterByName(step: Prisma.TransactionClient, name: string): Promise<string> {
  const known = await findByName(step, name);
  if (known !== undefined) return known;
  await step.client.createMany({ data: { name }, skipDuplicates: true });
  const entered = await findByName(step, name);
  if (entered === undefined) throw new Error(`client ${name} was entered and is not there`);
  return entered;
}

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
  const name = clientNameOf(document);
  if (person.clientId !== null) {
    const own = await step.client.findUniqueOrThrow({ where: { id: person.clientId } });
    if (name === '' || (await findByName(step, name)) === own.id) return own.id;
    const field = 'document.client';
    const problem = `allowed is your own company, ${own.name}`;
    throw refuse(
      'INPUT_NOT_VALID',
      { problems: `${field}: "${name}" given; ${problem}` },
      { fields: [{ field, given: name, problem }] },
    );
  }
  return name === '' ? null : enterByName(step, name);
}
