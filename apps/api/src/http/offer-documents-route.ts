import type { FastifyReply, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { roleTitles } from '../auth/roles.js';
import type { Database } from '../database/client.js';
import { apiErrorText } from '../errors/api-errors.js';
import { Refusal } from '../errors/refusal.js';
import { getOfferFile } from '../offers/get-offer-file.js';
import { getOfferInput } from '../routers/offers/get-offer.schema.js';
import { jobRoles } from '../trpc/procedures.js';
import type { Person } from '../trpc/context.js';

const params = getOfferInput.extend({ name: z.string().regex(/^[\w.-]{1,64}$/) });

/** Sends a document of an offer to whoever may have it; `?revision=B` names a letter. */
export async function sendOfferDocument(
  { database, person }: { readonly database: Database; readonly person: Person | undefined },
  request: FastifyRequest,
  reply: FastifyReply,
): Promise<void> {
  if (person === undefined) throw new Refusal('SIGN_IN_REQUIRED', apiErrorText('SIGN_IN_REQUIRED', {}));
  if (!jobRoles.includes(person.role)) {
    const allowed = jobRoles.map((role) => roleTitles[role]).join(', ');
    const details = { allowed, given: roleTitles[person.role] };
    throw new Refusal('ROLE_NOT_ALLOWED', apiErrorText('ROLE_NOT_ALLOWED', details));
  }
  const asked = params.safeParse({ ...Object(request.params), ...Object(request.query) });
  if (!asked.success)
    throw new Refusal('ROUTE_UNKNOWN', apiErrorText('ROUTE_UNKNOWN', { given: request.url }));
  const file = await getOfferFile({ database, person }, asked.data);
  await reply
    .header('content-type', file.mediaType)
    .header('content-disposition', `inline; filename="${file.fileName}"`)
    .header('cache-control', 'private, no-store')
    .header('x-content-type-options', 'nosniff')
    // A drawing is a document too: it runs no script and reaches nothing.
    .header('content-security-policy', "default-src 'none'; style-src 'unsafe-inline'; sandbox")
    .send(Buffer.from(file.content));
}
