import { fastifyTRPCPlugin, type FastifyTRPCPluginOptions } from '@trpc/server/adapters/fastify';
import fastify, { type FastifyError, type FastifyInstance } from 'fastify';
import type { Auth } from '../auth/auth.js';
import type { Database } from '../database/client.js';
import { apiErrors, type ApiErrorCode, type ApiErrorDetails } from '../errors/api-errors.js';
import { errorAnswer } from '../errors/answer.js';
import { appRouter, type AppRouter } from '../routers/router.js';
import { findPerson } from '../trpc/context.js';
import { serveAuth } from './auth-route.js';
import { headersOf } from './headers.js';

/** Enough for the largest document of the trade many times over. */
export const bodyLimitBytes = 2 ** 20;
const bodyLimitText = '1 MiB';

export interface ServerParts {
  readonly database: Database;
  readonly auth: Auth;
  /** Origins from which a browser may change something. */
  readonly trustedOrigins: readonly string[];
  readonly logLevel: string;
}

interface Failure<C extends ApiErrorCode> {
  readonly code: C;
  readonly details: ApiErrorDetails<C>;
}

const failure = <C extends ApiErrorCode>(code: C, details: ApiErrorDetails<C>): Failure<C> => ({
  code,
  details,
});

/** What the server itself refuses before a procedure sees it, in the words of our catalogue. */
function describeFailure(
  error: FastifyError,
  given: { contentType: string; request: string },
): Failure<ApiErrorCode> {
  switch (error.code) {
    case 'FST_ERR_CTP_BODY_TOO_LARGE':
      return failure('BODY_TOO_LARGE', { allowed: bodyLimitText });
    case 'FST_ERR_CTP_INVALID_MEDIA_TYPE':
      return failure('CONTENT_TYPE_NOT_ALLOWED', { given: given.contentType });
    case 'FST_ERR_CTP_INVALID_JSON_BODY':
    case 'FST_ERR_CTP_EMPTY_JSON_BODY':
    case 'FST_ERR_CTP_INVALID_CONTENT_LENGTH':
      return failure('BODY_NOT_JSON', {});
    default:
      return failure('FAULT', { request: given.request });
  }
}

/** The API: sign-in below /api/auth, procedures below /api/trpc. */
export async function createServer(parts: ServerParts): Promise<FastifyInstance> {
  const { database, auth, trustedOrigins } = parts;
  const server = fastify({
    logger: { level: parts.logLevel, redact: ['req.headers.cookie', 'req.headers.authorization'] },
    bodyLimit: bodyLimitBytes,
    routerOptions: { maxParamLength: 5000 },
  });

  server.removeContentTypeParser('text/plain');

  server.setErrorHandler<FastifyError>((error, request, reply) => {
    const contentType = request.headers['content-type'] ?? 'missing';
    const { code, details } = describeFailure(error, { contentType, request: request.id });
    if (code === 'FAULT') request.log.error(error);
    return reply.status(apiErrors[code].status).send({ error: errorAnswer(code, details) });
  });
  server.setNotFoundHandler((request, reply) =>
    reply.status(404).send({ error: errorAnswer('ROUTE_UNKNOWN', { given: request.url }) }),
  );

  // A browser names the page that a changing request comes from; one from elsewhere rides on the person's cookie.
  server.addHook('onRequest', async (request, reply) => {
    const { origin } = request.headers;
    if (request.method === 'GET' || origin === undefined || trustedOrigins.includes(origin)) return;
    const details = { given: origin, allowed: trustedOrigins.join(', ') };
    await reply.status(403).send({ error: errorAnswer('ORIGIN_NOT_ALLOWED', details) });
  });

  await server.register(serveAuth, { auth });
  await server.register(fastifyTRPCPlugin, {
    prefix: '/api/trpc',
    trpcOptions: {
      router: appRouter,
      createContext: async ({ req }) => ({
        database,
        person: await findPerson(auth, headersOf(req)),
        request: req.id,
      }),
      onError: ({ error, req }) => {
        if (error.code === 'INTERNAL_SERVER_ERROR') req.log.error(error.cause ?? error);
      },
    },
  } satisfies FastifyTRPCPluginOptions<AppRouter>);
  return server;
}
