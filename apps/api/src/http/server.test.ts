import { pricedDemoCatalogue } from '@flangewise/catalogue/prices';
import { hashPassword } from 'better-auth/crypto';
import type { FastifyInstance, InjectOptions, LightMyRequestResponse } from 'fastify';
import { expect, it, onTestFinished } from 'vitest';
import { demoPeople } from '../../../../prisma/seed/demo-people.js';
import { seedDemo } from '../../../../prisma/seed/seed-demo.js';
import { createAuth } from '../auth/auth.js';
import { addressLimit, personLimit } from '../auth/limit-attempts.js';
import { storeShippedRange } from '../catalogue/store-shipped-range.js';
import { migratedDatabase } from '../database/test-database.js';
import { bodyLimitBytes } from './json-body.js';
import type { Workers } from '../workshop/jobs.js';
import { runHere } from '../workshop/run-here.js';
import { createWorkers } from '../workshop/workers.js';
import { createWorkshops } from '../workshop/workshops.js';
import { createServer } from './server.js';
import { trustedOrigins } from './trusted-origins.js';

const origin = 'http://127.0.0.1:4310';
const password = 'correct-horse-battery';
const passwordHash = await hashPassword(password);

async function start(workers: Workers = createWorkers()): Promise<FastifyInstance> {
  const { database } = await migratedDatabase();
  await seedDemo(database, passwordHash);
  await storeShippedRange(database, { ...pricedDemoCatalogue, items: [], priceLists: [] });
  const trusted = trustedOrigins(origin);
  const auth = createAuth(database, { secret: 's'.repeat(32), origin, trustedOrigins: trusted });
  const server = createServer({
    database,
    auth,
    workshops: createWorkshops(database, runHere(workers)),
    trustedOrigins: trusted,
    logLevel: 'silent',
  });
  onTestFinished(() => server.close());
  return server;
}

const post = (url: string, payload: unknown, headers: Record<string, string> = {}): InjectOptions => ({
  method: 'POST',
  url,
  headers: { origin, 'content-type': 'application/json', ...headers },
  payload: JSON.stringify(payload),
});

const signIn = (server: FastifyInstance, email: string, given = password): Promise<LightMyRequestResponse> =>
  server.inject(post('/api/auth/sign-in/email', { email, password: given }));

const cookieOf = (response: LightMyRequestResponse): string =>
  response.cookies.map(({ name, value }) => `${name}=${encodeURIComponent(value)}`).join('; ');

it.each(demoPeople)('signs $email in as $role', async ({ email, name, role, clientId }) => {
  const server = await start();
  const response = await signIn(server, email);
  expect(response.statusCode).toBe(200);
  const cookie = cookieOf(response);
  const me = await server.inject({ url: '/api/trpc/session.me', headers: { cookie } });
  expect(me.json().result.data).toMatchObject({ email, name, role });
  expect(me.json().result.data.client?.id ?? null).toBe(clientId);
  await server.inject(post('/api/auth/sign-out', {}, { cookie }));
  const after = await server.inject({ url: '/api/trpc/session.me', headers: { cookie } });
  expect(after.json()).toEqual({ result: { data: null } });
});

it('asks whoever is not signed in to sign in', async () => {
  const server = await start();
  const response = await server.inject({ url: '/api/trpc/inquiries.list' });
  expect(response.statusCode).toBe(401);
  expect(response.json().error.data.reason).toBe('SIGN_IN_REQUIRED');
});

it('keeps its cookie from scripts and from other sites', async () => {
  const server = await start();
  const response = await signIn(server, 'engineer@averholt.example');
  expect(response.cookies[0]).toMatchObject({ httpOnly: true, sameSite: 'Lax', path: '/' });
});

it('refuses a wrong password and an unknown person alike', async () => {
  const server = await start();
  const wrong = await signIn(server, 'engineer@averholt.example', 'something else');
  const unknown = await signIn(server, 'stranger@averholt.example');
  expect([wrong.statusCode, unknown.statusCode]).toEqual([401, 401]);
  expect(wrong.json()).toEqual(unknown.json());
});

it('lets nobody sign up', async () => {
  const server = await start();
  const response = await server.inject(
    post('/api/auth/sign-up/email', { name: 'A', email: 'a@example.com', password, role: 'approver' }),
  );
  expect(response.statusCode).toBe(400);
});

it('lets nobody change their own role or company', async () => {
  const server = await start();
  const cookie = cookieOf(await signIn(server, 'chemist@sundrey.example'));
  for (const change of [{ role: 'approver' }, { clientId: 'demo-client-kelmoor' }]) {
    const response = await server.inject(post('/api/auth/update-user', change, { cookie }));
    expect(response.statusCode).toBe(400);
  }
  const me = await server.inject({ url: '/api/trpc/session.me', headers: { cookie } });
  expect(me.json().result.data).toMatchObject({ role: 'customer', client: { id: 'demo-client-sundrey' } });
});

/** A guess of somebody's password from some place; `remoteAddress` is the machine at the other end of the connection. */
const guess = async (
  server: FastifyInstance,
  email: string,
  from: { readonly forwardedFor: string; readonly remoteAddress?: string },
): Promise<LightMyRequestResponse> =>
  server.inject({
    ...post(
      '/api/auth/sign-in/email',
      { email, password: 'guess' },
      { 'x-forwarded-for': from.forwardedFor },
    ),
    ...(from.remoteAddress === undefined ? {} : { remoteAddress: from.remoteAddress }),
  });

const statusesOf = async (
  count: number,
  answer: (k: number) => Promise<LightMyRequestResponse>,
): Promise<readonly number[]> => {
  const statuses: number[] = [];
  for (let k = 0; k < count; k++) statuses.push((await answer(k)).statusCode);
  return statuses;
};

const refusedAfter = (count: number): readonly number[] => [...Array<number>(count).fill(401), 429];

it('slows down whoever guesses passwords from one address', async () => {
  const server = await start();
  const guessed = (k: number) => guess(server, `x${k}@averholt.example`, { forwardedFor: '192.0.2.7' });
  expect(await statusesOf(addressLimit.points + 1, guessed)).toEqual(refusedAfter(addressLimit.points));
  expect((await guess(server, 'x@averholt.example', { forwardedFor: '192.0.2.8' })).statusCode).toBe(401);
});

it('does not count the right passwords of a house that signs in behind one address', async () => {
  const server = await start();
  const people = ['engineer', 'sales', 'approver'];
  for (let k = 0; k < addressLimit.points + 2; k++) {
    const answer = await signIn(server, `${people[k % people.length] ?? ''}@averholt.example`);
    expect(answer.statusCode, `sign-in ${k}`).toBe(200);
  }
});

it('believes nobody but the web server on this machine whom a request comes from', async () => {
  const server = await start();
  const forged = (k: number) =>
    guess(server, `x${k}@averholt.example`, {
      forwardedFor: `192.0.2.${k}`,
      remoteAddress: '198.51.100.1',
    });
  expect(await statusesOf(addressLimit.points + 1, forged)).toEqual(refusedAfter(addressLimit.points));
  const passedOn = (k: number) =>
    guess(server, `x${k}@averholt.example`, { forwardedFor: `192.0.2.${k}, 198.51.100.2` });
  expect(await statusesOf(addressLimit.points + 1, passedOn)).toEqual(refusedAfter(addressLimit.points));
});

it.each(['engineer@averholt.example', 'stranger@averholt.example'])(
  'slows down whoever guesses the password of %s, from however many addresses',
  async (email) => {
    const server = await start();
    const spellings = [email, email.toUpperCase()];
    const guessed = (k: number) => guess(server, spellings[k % 2] ?? '', { forwardedFor: `192.0.2.${k}` });
    expect(await statusesOf(personLimit.points + 1, guessed)).toEqual(refusedAfter(personLimit.points));
    const right = await signIn(server, email);
    expect(right.statusCode).toBe(429);
    expect(right.json().error).toMatchObject({ data: { reason: 'TOO_MANY_ATTEMPTS', httpStatus: 429 } });
    expect(right.json().error.message).toContain('Wait 15 min, then try again');
    expect(Number(right.headers['retry-after'])).toBeGreaterThan(personLimit.duration - 60);
    expect((await signIn(server, 'sales@averholt.example')).statusCode).toBe(200);
  },
);

it('forgets the guesses once the right password is given', async () => {
  const server = await start();
  const email = 'engineer@averholt.example';
  const guessed = (k: number) => guess(server, email, { forwardedFor: `192.0.2.${k}` });
  for (const round of [1, 2]) {
    expect(await statusesOf(personLimit.points - 1, guessed), `round ${round}`).not.toContain(429);
    expect((await signIn(server, email)).statusCode).toBe(200);
  }
});

it.each(['http://127.0.0.1:4310', 'http://localhost:4310', 'http://[::1]:4310'])(
  'takes requests from the page at %s',
  async (from) => {
    const server = await start();
    const request = post('/api/auth/sign-in/email', { email: 'engineer@averholt.example', password });
    const response = await server.inject({ ...request, headers: { ...request.headers, origin: from } });
    expect(response.statusCode).toBe(200);
  },
);

it.each(['http://127.0.0.1:4311', 'https://elsewhere.example', 'null'])(
  'refuses requests from a page at %s',
  async (from) => {
    const server = await start();
    for (const url of ['/api/auth/sign-in/email', '/api/trpc/session.me']) {
      const response = await server.inject(post(url, {}, { origin: from }));
      expect(response.statusCode).toBe(403);
      expect(response.json().error.data.reason).toBe('ORIGIN_NOT_ALLOWED');
    }
  },
);

it.each(['/api/trpc/session.me', '/api/auth/sign-in/email'])(
  'refuses a body that is too large at %s',
  async (url) => {
    const server = await start();
    const response = await server.inject(post(url, 'x'.repeat(bodyLimitBytes)));
    expect(response.statusCode).toBe(413);
    expect(response.json().error.data).toMatchObject({ reason: 'BODY_TOO_LARGE', httpStatus: 413 });
    expect(response.json().error.message).toContain('1 MiB');
  },
);

it('refuses a body that is not JSON', async () => {
  const server = await start();
  const response = await server.inject({ ...post('/api/auth/sign-in/email', {}), payload: '{"email":' });
  expect(response.statusCode).toBe(400);
  expect(response.json().error.data.reason).toBe('BODY_NOT_JSON');
});

it.each(['/api/trpc/session.me', '/api/auth/sign-in/email'])(
  'refuses another content type at %s',
  async (url) => {
    const server = await start();
    const response = await server.inject(post(url, {}, { 'content-type': 'text/plain' }));
    expect(response.statusCode).toBe(415);
    expect(response.json().error.data.reason).toBe('CONTENT_TYPE_NOT_ALLOWED');
  },
);

it('says what it does not have', async () => {
  const server = await start();
  const reasons = ['/api/trpc/no.such', '/api/else'].map(async (url) => {
    const response = await server.inject({ url });
    return [response.statusCode, response.json().error.data.reason];
  });
  expect(await Promise.all(reasons)).toEqual([
    [404, 'ROUTE_UNKNOWN'],
    [404, 'ROUTE_UNKNOWN'],
  ]);
});

it('says whether the database answers', async () => {
  const server = await start();
  const response = await server.inject({ url: '/api/trpc/health.get' });
  expect(response.json()).toEqual({ result: { data: { database: 'answers' } } });
});

it('sends the rule book to the people of the maker alone, made once', async () => {
  let times = 0;
  const server = await start({
    ...createWorkers(),
    ruleBook: () => {
      times++;
      return Buffer.from('%PDF');
    },
  });
  const ask = async (email: string): Promise<LightMyRequestResponse> => {
    const cookie = cookieOf(await signIn(server, email));
    return server.inject({ url: '/api/rule-book.pdf', headers: { cookie } });
  };
  expect((await server.inject({ url: '/api/rule-book.pdf' })).statusCode).toBe(401);
  for (const { email, role } of demoPeople) {
    const response = await ask(email);
    expect(response.statusCode, role).toBe(role === 'customer' ? 403 : 200);
    if (role === 'customer') continue;
    expect(response.headers['content-type']).toBe('application/pdf');
    expect(response.body).toBe('%PDF');
  }
  expect(times).toBe(1);
});
