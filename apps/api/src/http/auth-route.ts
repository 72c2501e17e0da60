import type { FastifyReply, FastifyRequest } from 'fastify';
import type { Auth } from '../auth/auth.js';
import { headersOf } from './headers.js';

/** Hands a request to the sign-in library, which speaks the fetch standard, and its answer back. */
export async function forwardToAuth(auth: Auth, request: FastifyRequest, reply: FastifyReply): Promise<void> {
  const { method, url, body } = request;
  const answer = await auth.handler(
    new Request(new URL(url, auth.options.baseURL), {
      method,
      headers: headersOf(request),
      ...(typeof body === 'string' ? { body } : {}),
    }),
  );
  await reply.send(answer);
}
