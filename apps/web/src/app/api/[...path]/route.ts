import type { NextRequest } from 'next/server';

export const dynamic = 'force-dynamic';

/** Headers that belong to one connection and not to the message (RFC 9110 §7.6.1), or that fetch sets itself. */
const ofTheConnection = [
  'connection',
  'content-length',
  'expect',
  'host',
  'keep-alive',
  'te',
  'transfer-encoding',
  'upgrade',
];

/** Hands a request below /api to the API and its answer back, both as they come, so that pages and API have one origin. */
async function forward(request: NextRequest): Promise<Response> {
  const api = process.env['API_ORIGIN'];
  if (api === undefined)
    return Response.json({ error: { message: 'API_ORIGIN is not set' } }, { status: 502 });
  const headers = new Headers(request.headers);
  for (const name of ofTheConnection) headers.delete(name);
  try {
    const answer = await fetch(new URL(request.nextUrl.pathname + request.nextUrl.search, api), {
      method: request.method,
      headers,
      body: request.body,
      redirect: 'manual',
      cache: 'no-store',
      signal: request.signal,
      duplex: 'half',
    } as RequestInit);
    const answered = new Headers(answer.headers);
    for (const name of [...ofTheConnection, 'content-encoding']) answered.delete(name);
    return new Response(answer.body, { status: answer.status, headers: answered });
  } catch (error) {
    console.error(error);
    return Response.json(
      { error: { message: 'The API does not answer. Try again in a moment.' } },
      { status: 502 },
    );
  }
}

export {
  forward as DELETE,
  forward as GET,
  forward as HEAD,
  forward as PATCH,
  forward as POST,
  forward as PUT,
};
