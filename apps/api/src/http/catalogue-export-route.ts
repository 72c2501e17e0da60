import { exchangeFormats, exchangeMediaTypes } from '@flangewise/catalogue/exchange';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { exportRevision } from '../catalogue/export-revision.js';
import { refuse } from '../errors/refusal.js';
import { id } from '../routers/as-typed.js';
import type { Context } from '../trpc/context.js';
import { catalogueReaders } from '../trpc/procedures.js';
import { admit } from './admit.js';

const params = z.object({
  id,
  file: z
    .string()
    .transform((name) => name.replace(/^export\./, ''))
    .pipe(z.enum(exchangeFormats)),
});

/** Sends a revision of the catalogue as a file to whoever of the maker's people asks. */
export async function sendCatalogueExport(
  { database, workshops, person }: Pick<Context, 'database' | 'workshops' | 'person'>,
  request: FastifyRequest,
  reply: FastifyReply,
): Promise<void> {
  admit(person, catalogueReaders);
  const asked = params.safeParse(request.params);
  if (!asked.success) throw refuse('ROUTE_UNKNOWN', { given: request.url });
  const { id: revisionId, file: format } = asked.data;
  const { name, content } = await exportRevision({ database, workshops }, { id: revisionId, format });
  await reply
    .header('content-type', exchangeMediaTypes[format])
    .header('content-disposition', `attachment; filename="catalogue-${name.replaceAll(' ', '-')}.${format}"`)
    .header('cache-control', 'private, no-store')
    .header('x-content-type-options', 'nosniff')
    .send(Buffer.from(content));
}
