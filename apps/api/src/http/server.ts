import type { IncomingMessage } from 'node:http';
import { fastifyRequestHandler } from '@trpc/server/adapters/fastify';
import fastify, {
  type FastifyError,
  type FastifyInstance,
  type FastifyReply,
  type FastifyRequest,
} from 'fastify';
import type { Auth } from '../auth/auth.js';
import { Role } from '../auth/roles.js';
import type { Database } from '../database/client.js';
import { answerWith, errorAnswer } from '../errors/answer.js';
import { apiErrors, apiErrorText } from '../errors/api-errors.js';
import { Refusal } from '../errors/refusal.js';
import { appRouter } from '../routers/router.js';
import { findPerson } from '../trpc/context.js';
import type { Workshops } from '../workshop/workshops.js';
import { forwardToAuth } from './auth-route.js';
import { sendCatalogueExport } from './catalogue-export-route.js';
import { headersOf } from './headers.js';
import { bodyLimitBytes, fileLimitBytes, readJsonText } from './json-body.js';
import { sendOfferDocument } from './offer-documents-route.js';
import { sendRuleBook } from './rule-book-route.js';

export interface ServerParts {
  readonly database: Database;
  readonly auth: Auth;
  readonly workshops: Workshops;
  /** Origins from which a browser may change something. */
  readonly trustedOrigins: readonly string[];
  readonly logLevel: string;
}

/** What the server itself refuses, before a procedure sees it. */
function refusalOf(error: FastifyError | Refusal, request: FastifyRequest): Refusal {
  if (error instanceof Refusal) return error;
  if (error.cause instanceof Refusal) return error.cause;
  if (error.code === 'FST_ERR_CTP_INVALID_MEDIA_TYPE') {
    const given = request.headers['content-type'] ?? 'missing';
    return new Refusal('CONTENT_TYPE_NOT_ALLOWED', apiErrorText('CONTENT_TYPE_NOT_ALLOWED', { given }));
  }
  request.log.error(error);
  return new Refusal('FAULT', apiErrorText('FAULT', { request: request.id }));
}

/** The API: sign-in below /api/auth, procedures below /api/trpc, files below /api/offers and /api/catalogue, the rule book. */
export function createServer(parts: ServerParts): FastifyInstance {
  const { database, auth, workshops, trustedOrigins, logLevel } = parts;
  const server = fastify({
    logger: { level: logLevel, redact: ['req.headers.cookie', 'req.headers.authorization'] },
    // A batch names all its procedures in the path.
    routerOptions: { maxParamLength: 5000 },
    // The web server stands on this machine; of anybody else X-Forwarded-For is hearsay.
    trustProxy: 'loopback',
  });
  server.removeAllContentTypeParsers();
  // A file of items is large, and only the catalogue keeper brings one.
  server.addContentTypeParser(
    'application/json',
    async (request: FastifyRequest, payload: IncomingMessage) => {
      const bringsFile =
        new URL(request.url, auth.options.baseURL).pathname === '/api/trpc/catalogue.importFile';
      const person = bringsFile ? await findPerson(auth, headersOf(request)) : undefined;
      return readJsonText(payload, person?.role === Role.catalogue_keeper ? fileLimitBytes : bodyLimitBytes);
    },
  );

  server.setErrorHandler<FastifyError | Refusal>((error, request, reply) => {
    const { code, message, enclosed } = refusalOf(error, request);
    return reply.status(apiErrors[code].status).send({ error: answerWith(code, message, enclosed) });
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

  server.route({
    method: ['GET', 'POST'],
    url: '/api/auth/*',
    handler: (request, reply) => forwardToAuth(auth, request, reply),
  });
  server.route<{ Params: { path: string } }>({
    method: ['GET', 'POST'],
    url: '/api/trpc/:path',
    handler: (req, res: FastifyReply) =>
      fastifyRequestHandler({
        router: appRouter,
        req,
        res,
        path: req.params.path,
        createContext: async () => ({
          database,
          workshops,
          workshop: await workshops.current(),
          person: await findPerson(auth, headersOf(req)),
          request: req.id,
        }),
        onError: ({ error }) => {
          if (error.code === 'INTERNAL_SERVER_ERROR') req.log.error(error.cause ?? error);
        },
      }),
  });
  server.get('/api/offers/:id/documents/:name', async (request, reply) => {
    const person = await findPerson(auth, headersOf(request));
    return sendOfferDocument({ database, person }, request, reply);
  });
  server.get('/api/catalogue/:id/:file', async (request, reply) => {
    const person = await findPerson(auth, headersOf(request));
    return sendCatalogueExport({ database, workshops, person }, request, reply);
  });
  server.get('/api/rule-book.pdf', async (request, reply) => {
    const person = await findPerson(auth, headersOf(request));
    return sendRuleBook({ workshops, person }, reply);
  });
  return server;
}
