import { existsSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { fail, succeed, type Outcome } from '@flangewise/model';
import { webBuildKey } from './build-key.js';
import { checkout } from './checkout.js';
import { startChild } from './child.js';
import { takeLock, type InstanceLock } from './instance-lock.js';
import { lastLines } from './last-lines.js';
import { problem, type StartProblem } from './problems.js';
import { holdBuild, removeOldBuilds } from './web-builds.js';

export const webFolder = join(checkout, 'apps', 'web');
const require = createRequire(join(webFolder, 'package.json'));
/** The command of the web framework. */
export const nextCommand = require.resolve('next/dist/bin/next');

const buildsFolder = join('.next', 'builds');
const finished = 'FINISHED';

export interface WebBuild {
  /** Folder of the build within apps/web. */
  readonly folder: string;
  /** Whether it was made now. */
  readonly fresh: boolean;
  /** Lets others remove it; to be called when it is not run any more. */
  readonly release: () => void;
}

export interface BuildOptions {
  readonly logFile: string;
  readonly signal: AbortSignal;
  /** Called when there is something to build, which takes a while. */
  readonly onBuild: () => void;
}

/** Waits while another starter of the same checkout builds. */
async function lockBuilds(file: string, signal: AbortSignal): Promise<InstanceLock | undefined> {
  while (!signal.aborted) {
    const lock = await takeLock(file);
    if (lock.ok) return lock.value;
    await wait(500);
  }
  return undefined;
}

async function build(folder: string, options: BuildOptions): Promise<Outcome<null, StartProblem>> {
  const next = startChild({
    title: 'Building the web pages',
    args: [nextCommand, 'build'],
    cwd: webFolder,
    env: { NODE_ENV: 'production', FLANGEWISE_WEB_BUILD: folder, NEXT_TELEMETRY_DISABLED: '1' },
    logFile: options.logFile,
  });
  const stop = (): void => void next.stop();
  options.signal.addEventListener('abort', stop);
  await next.ended;
  options.signal.removeEventListener('abort', stop);
  if (options.signal.aborted) return fail(problem('STOPPED', {}));
  if (next.process.exitCode !== 0)
    return fail(problem('BUILD_FAILED', { what: 'the web pages', log: lastLines(options.logFile, 40) }));
  return succeed(null);
}

/** The production build of the web pages as the sources are now: the one that is there, or a new one. */
export async function buildWeb(options: BuildOptions): Promise<Outcome<WebBuild, StartProblem>> {
  const folder = join(buildsFolder, webBuildKey(checkout));
  const place = join(webFolder, folder);
  const isFinished = (): boolean => existsSync(join(place, finished));
  const use = (fresh: boolean): Outcome<WebBuild, StartProblem> =>
    succeed({ folder, fresh, release: holdBuild(place) });
  if (isFinished()) return use(false);
  mkdirSync(join(webFolder, buildsFolder), { recursive: true });
  const lock = await lockBuilds(join(webFolder, buildsFolder, 'lock.json'), options.signal);
  if (lock === undefined) return fail(problem('STOPPED', {}));
  try {
    if (isFinished()) return use(false);
    options.onBuild();
    rmSync(place, { recursive: true, force: true });
    const built = await build(folder, options);
    if (!built.ok) return built;
    writeFileSync(join(place, finished), '');
    removeOldBuilds(join(webFolder, buildsFolder));
    return use(true);
  } finally {
    lock.release();
  }
}
