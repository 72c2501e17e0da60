import type { FastifyReply } from 'fastify';
import type { Context } from '../trpc/context.js';
import { catalogueReaders } from '../trpc/procedures.js';
import { keepLast } from '../workshop/keep-last.js';
import { admit } from './admit.js';

/** Rules change with the program alone, so that a book once made stays true while it runs. */
const made = keepLast<Promise<Uint8Array>>(1);

/** Sends the rule book as PDF to whoever of the maker's people asks. */
export async function sendRuleBook(
  { workshops, person }: Pick<Context, 'workshops' | 'person'>,
  reply: FastifyReply,
): Promise<void> {
  admit(person, catalogueReaders);
  const workshop = await workshops.current();
  const { maker } = workshop.catalogue;
  const book = await made.get(maker, async () => {
    try {
      return await workshop.run('ruleBook', null);
    } catch (error) {
      made.forget(maker);
      throw error;
    }
  });
  await reply
    .header('content-type', 'application/pdf')
    .header('content-disposition', 'inline; filename="rule-book.pdf"')
    .header('cache-control', 'private, no-store')
    .header('x-content-type-options', 'nosniff')
    .send(Buffer.from(book));
}
