import { randomUUID } from 'node:crypto';
import { mkdir, readdir, rename, rm, rmdir, writeFile } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { succeed } from '@flangewise/model';
import { type OrRefusal, refuse } from '../trouble.js';

export interface OutputFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

const isMissing = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && error.code === 'ENOENT';

/** What lies in a folder; undefined where there is no such folder. */
const namesIn = async (folder: string): Promise<readonly string[] | undefined> => {
  try {
    return await readdir(folder);
  } catch (error) {
    if (isMissing(error)) return undefined;
    throw error;
  }
};

const unwritable = (folder: string, error: unknown): ReturnType<typeof refuse> =>
  refuse({
    code: 'OUTPUT_UNWRITABLE',
    path: '--out',
    given: folder,
    message: `cannot be written: ${error instanceof Error ? error.message : String(error)}`,
  });

/**
 * Finds out whether a folder may be written: it does not exist yet, or holds nothing but files of these names.
 * Nobody else's file is ever replaced.
 */
export const mayWrite = async (folder: string, names: readonly string[]): Promise<OrRefusal<undefined>> => {
  try {
    const strangers = ((await namesIn(folder)) ?? []).filter((name) => !names.includes(name));
    if (strangers.length === 0) return succeed(undefined);
    return refuse({
      code: 'OUTPUT_NOT_EMPTY',
      path: '--out',
      given: folder,
      message: `holds ${strangers.slice(0, 3).join(', ')}${strangers.length > 3 ? ' and more' : ''}; give a folder that is empty, does not exist yet, or holds an earlier issue`,
    });
  } catch (error) {
    return unwritable(folder, error);
  }
};

/** Puts a finished folder in its place; an earlier issue steps aside and is dropped once the new one stands. */
const replace = async (made: string, place: string): Promise<void> => {
  const before = await namesIn(place);
  if (before === undefined || before.length === 0) {
    if (before !== undefined) await rmdir(place);
    await rename(made, place);
    return;
  }
  const aside = `${made}-before`;
  await rename(place, aside);
  await rename(made, place);
  await rm(aside, { recursive: true });
};

/**
 * Writes files into a folder, all or none: they are written beside it and take its place when the last is complete.
 * Ask `mayWrite` first: what the folder holds is replaced.
 */
export const writeFolder = async (
  folder: string,
  files: readonly OutputFile[],
): Promise<OrRefusal<undefined>> => {
  const place = resolve(folder);
  const made = join(dirname(place), `.${basename(place)}-${randomUUID()}`);
  try {
    await mkdir(made, { recursive: true });
    for (const { name, bytes } of files) await writeFile(join(made, name), bytes);
    await replace(made, place);
    return succeed(undefined);
  } catch (error) {
    await rm(made, { recursive: true, force: true });
    return unwritable(folder, error);
  }
};
