import type { FastifyInstance } from 'fastify';
import type { Auth } from '../auth/auth.js';
import { headersOf } from './headers.js';

/** Hands the requests below /api/auth to the sign-in library, which speaks the fetch standard. */
export async function serveAuth(server: FastifyInstance, { auth }: { auth: Auth }): Promise<void> {
  server.route({
    method: ['GET', 'POST'],
    url: '/api/auth/*',
    handler: async (request, reply) => {
      const answer = await auth.handler(
        new Request(new URL(request.url, auth.options.baseURL), {
          method: request.method,
          headers: headersOf(request),
          ...(request.body === undefined ? {} : { body: JSON.stringify(request.body) }),
        }),
      );
      return reply.send(answer);
    },
  });
}
