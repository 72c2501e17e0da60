import { userInfo } from 'node:os';
import { join } from 'node:path';
import type { Outcome } from '@flangewise/model';
import { applyMigrations, readMigrations } from '../database/apply-migrations.js';
import { announcement } from './announce.js';
import { buildApi } from './build-api.js';
import { buildWeb, type WebBuild } from './build-web.js';
import { checkout } from './checkout.js';
import { openDataFolder, type DataFolder } from './data-folder.js';
import { givenDatabase, startDatabase, type RunningDatabase } from './database.js';
import { prepareDemo } from './demo.js';
import { takeLock } from './instance-lock.js';
import type { StartOptions } from './options.js';
import { freePort, isFree } from './ports.js';
import { problem, type StartProblem } from './problems.js';
import { readSecrets, type Secrets } from './secrets.js';
import { apiAddress, startApi, startWeb, webAnswers } from './servers.js';
import { StopList } from './stop-list.js';

// The order of a start: data folder and lock, port, database and builds side by side, API, web. Each thing that was started
// goes on the stop list at once; whatever ends the run, the list is stopped from its end.

/** Carries a problem up to where everything is stopped. */
class Halt extends Error {
  constructor(readonly problem: StartProblem) {
    super(problem.message);
  }
}

function need<T>(outcome: Outcome<T, StartProblem>): T {
  if (!outcome.ok) throw new Halt(outcome.error);
  return outcome.value;
}

interface Start {
  readonly options: StartOptions;
  readonly stops: StopList;
  /** Ends what is under way: the person asked for it, or something else failed. */
  readonly halt: AbortController;
}

async function takeDataFolder({
  options,
  stops,
}: Start): Promise<{ data: DataFolder; holdAs: (address: string) => void }> {
  const data = need(openDataFolder(options.dataFolder, checkout));
  const lock = await takeLock(join(data.path, 'instance.json'));
  if (!lock.ok) {
    const { pid, address } = lock.error;
    throw new Halt(problem('ALREADY_RUNNING', { folder: data.path, pid, address }));
  }
  stops.add(lock.value.release);
  return { data, holdAs: lock.value.announce };
}

async function choosePort({ port }: StartOptions): Promise<number> {
  if (port === 0) return freePort();
  if (!(await isFree(port))) throw new Halt(problem('PORT_TAKEN', { port }));
  return port;
}

async function prepareDatabase(start: Start, data: DataFolder, secrets: Secrets): Promise<RunningDatabase> {
  const { options, stops, halt } = start;
  const database =
    options.databaseUrl === undefined
      ? need(await startDatabase(data, secrets.databasePassword, halt.signal))
      : givenDatabase(options.databaseUrl);
  stops.add(database.stop);
  const migrations = readMigrations(join(checkout, 'prisma', 'migrations'));
  const applied = need(await applyMigrations(database.url, migrations));
  if (applied.length > 0) console.log(`Database brought up to date (${applied.length} migrations).`);
  return database;
}

async function prepareWeb({ halt, stops }: Start, data: DataFolder): Promise<WebBuild> {
  const began = performance.now();
  const built = need(
    await buildWeb({
      logFile: data.log('web-build'),
      signal: halt.signal,
      onBuild: () => console.log('Building the web pages; later starts use the result …'),
    }),
  );
  stops.add(built.release);
  if (built.fresh) console.log(`Web pages built in ${((performance.now() - began) / 1000).toFixed(1)} s.`);
  return built;
}

/** All of them, or the failure that came first, once every one has ended: nothing is left under way. */
async function together<T extends readonly Promise<unknown>[]>(
  halt: AbortController,
  tasks: readonly [...T],
): Promise<{ -readonly [K in keyof T]: Awaited<T[K]> }> {
  const failures: unknown[] = [];
  const watch = (task: Promise<unknown>): Promise<unknown> =>
    task.catch((error: unknown) => {
      failures.push(error);
      halt.abort();
    });
  const results = await Promise.all(tasks.map(watch));
  if (failures.length > 0) throw failures[0];
  return results as { -readonly [K in keyof T]: Awaited<T[K]> };
}

/** Starts everything and runs until it is halted or a part ends by itself. */
async function runAll(start: Start): Promise<never> {
  const { options, stops, halt } = start;
  const { data, holdAs } = await takeDataFolder(start);
  const port = await choosePort(options);
  const secrets = need(readSecrets(data));
  const [database, web, apiFile] = await together(halt, [
    prepareDatabase(start, data, secrets),
    prepareWeb(start, data),
    buildApi().then(need),
  ]);
  const signIns = await prepareDemo(database.url, secrets.demoPassword);

  const local = `http://127.0.0.1:${port}`;
  const api = startApi({
    file: apiFile,
    databaseUrl: database.url,
    authSecret: secrets.authSecret,
    publicOrigin: options.publicOrigin ?? local,
    logFile: data.log('api'),
  });
  stops.add(api.stop);
  const address = need(await apiAddress(api, halt.signal));
  const pages = startWeb({ build: web.folder, port, apiAddress: address, logFile: data.log('web') });
  stops.add(pages.stop);
  need(await webAnswers(pages, local, halt.signal));

  holdAs(local);
  console.log(announcement(options.publicOrigin ?? local, secrets.demoPassword, signIns));
  throw new Halt(await Promise.race([whenHalted(halt.signal), database.ended, api.ended, pages.ended]));
}

function whenHalted(signal: AbortSignal): Promise<StartProblem> {
  const stopped = problem('STOPPED', {});
  return new Promise((resolve) => {
    if (signal.aborted) resolve(stopped);
    else signal.addEventListener('abort', () => resolve(stopped), { once: true });
  });
}

/** What the system refuses to write, told as trouble of the person's; anything else is a fault of ours. */
function refusedWrite(error: unknown): StartProblem | undefined {
  const { code, path, message } = error as NodeJS.ErrnoException;
  if (path === undefined || !['EACCES', 'EPERM', 'EROFS', 'ENOSPC'].includes(code ?? '')) return undefined;
  return problem('FILE_NOT_WRITABLE', { path, user: userInfo().username, reason: message });
}

/**
 * Runs the product until `signal` asks it to stop or something fails, and stops everything that was started.
 *
 * @returns why it ended
 */
export async function run(options: StartOptions, signal: AbortSignal): Promise<StartProblem> {
  const halt = new AbortController();
  const stops = new StopList();
  signal.addEventListener('abort', () => halt.abort());
  try {
    return await runAll({ options, stops, halt });
  } catch (error) {
    if (signal.aborted) return problem('STOPPED', {});
    if (error instanceof Halt) return error.problem;
    const refused = refusedWrite(error);
    if (refused === undefined) throw error;
    return refused;
  } finally {
    await stops.stopAll();
  }
}
