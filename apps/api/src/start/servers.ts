import { once } from 'node:events';
import { fail, succeed, type Outcome } from '@flangewise/model';
import { z } from 'zod';
import { checkout } from './checkout.js';
import { startChild, type Child } from './child.js';
import { problem, type StartProblem } from './problems.js';
import { nextCommand, webFolder } from './build-web.js';

const readyLimitSeconds = 60;
const endWithParent = new URL('end-with-parent.mjs', import.meta.url).href;

/** Waits for `ready`, but no longer than the child lives, the person waits, or the limit. */
async function whenReady<T>(
  child: Child,
  ready: Promise<T>,
  signal: AbortSignal,
): Promise<Outcome<T, StartProblem>> {
  const limit = AbortSignal.any([signal, AbortSignal.timeout(readyLimitSeconds * 1000)]);
  const given = once(limit, 'abort').then(() =>
    fail(signal.aborted ? problem('STOPPED', {}) : child.tooSlow(readyLimitSeconds)),
  );
  return Promise.race([
    ready.then((value) => succeed(value)),
    child.ended.then((trouble) => fail(trouble)),
    given,
  ]);
}

export interface ApiSettings {
  readonly file: string;
  readonly databaseUrl: string;
  readonly authSecret: string;
  readonly publicOrigin: string;
  readonly logFile: string;
}

export function startApi(settings: ApiSettings): Child {
  return startChild({
    title: 'The API',
    args: ['--enable-source-maps', settings.file],
    cwd: checkout,
    env: {
      NODE_ENV: 'production',
      DATABASE_URL: settings.databaseUrl,
      AUTH_SECRET: settings.authSecret,
      PUBLIC_ORIGIN: settings.publicOrigin,
      API_PORT: '0',
    },
    logFile: settings.logFile,
  });
}

const listening = z.object({ address: z.url() });

/** The address of an API once it listens. */
export function apiAddress(api: Child, signal: AbortSignal): Promise<Outcome<string, StartProblem>> {
  const told = once(api.process, 'message').then(([message]) => listening.parse(message).address);
  return whenReady(api, told, signal);
}

export interface WebSettings {
  readonly build: string;
  readonly port: number;
  readonly apiAddress: string;
  readonly logFile: string;
}

export function startWeb({ build, port, apiAddress, logFile }: WebSettings): Child {
  return startChild({
    title: 'The web server',
    args: ['--import', endWithParent, nextCommand, 'start', '-H', '127.0.0.1', '-p', String(port)],
    cwd: webFolder,
    env: {
      NODE_ENV: 'production',
      FLANGEWISE_WEB_BUILD: build,
      API_ORIGIN: apiAddress,
      NEXT_TELEMETRY_DISABLED: '1',
    },
    logFile,
  });
}

async function answersAt(url: string, signal: AbortSignal): Promise<void> {
  while (!signal.aborted) {
    const answer = await fetch(url).catch(() => undefined);
    if (answer?.ok === true) return;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

/** Waits until the web answers, and through it the API. */
export function webAnswers(
  web: Child,
  origin: string,
  signal: AbortSignal,
): Promise<Outcome<void, StartProblem>> {
  return whenReady(web, answersAt(`${origin}/api/trpc/health.get`, signal), signal);
}
