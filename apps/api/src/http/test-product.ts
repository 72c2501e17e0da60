import { pricedDemoCatalogue } from '@flangewise/catalogue/prices';
import type { Catalogue } from '@flangewise/model';
import { hashPassword } from 'better-auth/crypto';
import type { LightMyRequestResponse } from 'fastify';
import type { demoPeople } from '../../../../prisma/seed/demo-people.js';
import { seedDemo } from '../../../../prisma/seed/seed-demo.js';
import { createAuth } from '../auth/auth.js';
import { storeShippedRange } from '../catalogue/store-shipped-range.js';
import type { Database } from '../database/client.js';
import { type AtEnd, migratedDatabase } from '../database/test-database.js';
import type { ErrorAnswer } from '../errors/answer.js';
import { appRouter } from '../routers/router.js';
import type { RunJob } from '../workshop/jobs.js';
import { runHere } from '../workshop/run-here.js';
import { createWorkers } from '../workshop/workers.js';
import type { Workshop } from '../workshop/workshop.js';
import { createWorkshops, type Workshops } from '../workshop/workshops.js';
import { createServer } from './server.js';
import { trustedOrigins } from './trusted-origins.js';

const origin = 'http://127.0.0.1:4310';
const password = 'correct-horse-battery';
const passwordHash = hashPassword(password);

/** The people of the demo by what they stand for; `nobody` is not signed in. */
export const people = {
  engineer: 'engineer@averholt.example',
  sales: 'sales@averholt.example',
  approver: 'approver@averholt.example',
  keeper: 'catalogue@averholt.example',
  sundrey: 'chemist@sundrey.example',
  kelmoor: 'chemist@kelmoor.example',
  nobody: null,
} as const satisfies Record<string, (typeof demoPeople)[number]['email'] | null>;

export type Caller = keyof typeof people;
export const callers = Object.keys(people) as Caller[];

export interface Answer {
  readonly status: number;
  /** The body as it went over the wire. */
  readonly text: string;
  // eslint-disable-next-line @typescript-eslint/no-explicit-any -- a test reads what it asserts on
  readonly data: any;
  readonly error: ErrorAnswer | undefined;
}

const procedures = appRouter._def.procedures as unknown as Readonly<
  Record<string, { readonly _def: { readonly type: 'query' | 'mutation' } }>
>;

/** All procedures, by path. */
export const procedurePaths: readonly string[] = Object.keys(procedures);

export interface TestProduct {
  readonly url: string;
  readonly database: Database;
  /** Over the catalogue that was in force at the start. */
  readonly workshop: Workshop;
  readonly workshops: Workshops;
  /** Calls a procedure over HTTP as somebody. */
  readonly call: (as: Caller, path: string, input?: unknown) => Promise<Answer>;
  /** The answer of a call that has to succeed. */
  // eslint-disable-next-line @typescript-eslint/no-explicit-any -- a test reads what it asserts on
  readonly ask: (as: Caller, path: string, input?: unknown) => Promise<any>;
  readonly get: (as: Caller, url: string) => Promise<LightMyRequestResponse>;
}

export interface TestSettings {
  /** What came with the product. */
  readonly catalogue?: Catalogue;
  /** Whoever does the jobs; in the thread of the test where nobody says. */
  readonly runJob?: RunJob;
}

/** The whole API on a database of its own with the people of the demo. */
export async function startProduct(
  atEnd: AtEnd,
  { catalogue = pricedDemoCatalogue, runJob = runHere(createWorkers()) }: TestSettings = {},
): Promise<TestProduct> {
  const { url, database } = await migratedDatabase(atEnd);
  await seedDemo(database, await passwordHash);
  await storeShippedRange(database, catalogue);
  const workshops = createWorkshops(database, runJob);
  const trusted = trustedOrigins(origin);
  const auth = createAuth(database, { secret: 's'.repeat(32), origin, trustedOrigins: trusted });
  const server = createServer({ database, auth, workshops, trustedOrigins: trusted, logLevel: 'silent' });
  atEnd(async () => {
    await server.close();
  });

  const cookies = new Map<Caller, Promise<string>>();
  const signIn = async (email: string): Promise<string> => {
    const answer = await server.inject({
      method: 'POST',
      url: '/api/auth/sign-in/email',
      headers: { origin },
      payload: { email, password },
    });
    return answer.cookies.map(({ name, value }) => `${name}=${encodeURIComponent(value)}`).join('; ');
  };
  const headersOf = async (as: Caller): Promise<Record<string, string>> => {
    const email = people[as];
    if (email === null) return { origin };
    const cookie = cookies.get(as) ?? signIn(email);
    cookies.set(as, cookie);
    return { origin, cookie: await cookie };
  };
  const call = async (as: Caller, path: string, input?: unknown): Promise<Answer> => {
    const headers = await headersOf(as);
    const answer =
      procedures[path]?._def.type === 'query'
        ? await server.inject({
            url: `/api/trpc/${path}`,
            headers,
            ...(input === undefined ? {} : { query: { input: JSON.stringify(input) } }),
          })
        : await server.inject({
            method: 'POST',
            url: `/api/trpc/${path}`,
            headers: { ...headers, 'content-type': 'application/json' },
            payload: JSON.stringify(input ?? {}),
          });
    const body = answer.json<{ result?: { data: unknown }; error?: ErrorAnswer }>();
    return { status: answer.statusCode, text: answer.body, data: body.result?.data, error: body.error };
  };
  return {
    url,
    database,
    workshop: await workshops.current(),
    workshops,
    call,
    ask: async (as, path, input) => {
      const { status, text, data } = await call(as, path, input);
      if (status !== 200) throw new Error(`${path} as ${as}: ${text.slice(0, 2000)}`);
      return data;
    },
    get: async (as, path) => server.inject({ url: path, headers: await headersOf(as) }),
  };
}
