import type { FastifyReply, FastifyRequest } from 'fastify';
import { z } from 'zod';
import type { Database } from '../database/client.js';
import { apiErrorText } from '../errors/api-errors.js';
import { Refusal } from '../errors/refusal.js';
import { getOfferFile } from '../offers/get-offer-file.js';
import { getOfferInput } from '../routers/offers/get-offer.schema.js';
import type { Person } from '../trpc/context.js';
import { jobRoles } from '../trpc/procedures.js';
import { admit } from './admit.js';

const params = getOfferInput.extend({ name: z.string().regex(/^[\w.-]{1,64}$/) });

/** Sends a document of an offer to whoever may have it; `?revision=B` names a letter. */
export async function sendOfferDocument(
  { database, person }: { readonly database: Database; readonly person: Person | undefined },
  request: FastifyRequest,
  reply: FastifyReply,
): Promise<void> {
  const reader = admit(person, jobRoles);
  const asked = params.safeParse({ ...Object(request.params), ...Object(request.query) });
  if (!asked.success)
    throw new Refusal('ROUTE_UNKNOWN', apiErrorText('ROUTE_UNKNOWN', { given: request.url }));
  const file = await getOfferFile({ database, person: reader }, asked.data);
  await reply
    .header('content-type', file.mediaType)
    .header('content-disposition', `inline; filename="${file.fileName}"`)
    .header('cache-control', 'private, no-store')
    .header('x-content-type-options', 'nosniff')
    // A drawing is a document too: it runs no script and reaches nothing.
    .header('content-security-policy', "default-src 'none'; style-src 'unsafe-inline'; sandbox")
    .send(Buffer.from(file.content));
}
