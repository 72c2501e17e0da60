import type { FastifyRequest } from 'fastify';

/** The headers of a request in the form of the fetch standard; where it comes from is what the server believes of it. */
export function headersOf(request: FastifyRequest): Headers {
  const headers = new Headers();
  for (const [name, value] of Object.entries(request.headers))
    for (const one of [value].flat()) if (one !== undefined) headers.append(name, one);
  headers.set('x-forwarded-for', request.ip);
  return headers;
}
