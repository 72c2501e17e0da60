import type { FastifyReply, FastifyRequest } from 'fastify';
import type { Auth } from '../auth/auth.js';
import { errorAnswer } from '../errors/answer.js';
import { headersOf } from './headers.js';

const waitText = (seconds: number): string =>
  seconds < 60 ? `${seconds} s` : `${Math.ceil(seconds / 60)} min`;

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
  if (answer.status !== 429) return reply.send(answer);
  const seconds = Number(answer.headers.get('x-retry-after'));
  return reply
    .status(429)
    .header('retry-after', seconds)
    .send({ error: errorAnswer('TOO_MANY_ATTEMPTS', { wait: waitText(seconds) }) });
}
