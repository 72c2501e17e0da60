import { chownSync, closeSync, mkdirSync, openSync, statSync, unlinkSync, writeFileSync } from 'node:fs';
import { userInfo } from 'node:os';
import { join } from 'node:path';
import { fail, succeed, type Outcome } from '@flangewise/model';
import { findAccount } from '../embedded-database/account.js';
import { problem, type StartProblem } from './problems.js';

/** The folder with everything that one instance keeps: database, secrets, logs. */
export interface DataFolder {
  readonly path: string;
  /** Writes a file that only the folder's owner may read. Fails when it exists. */
  readonly writeNew: (name: string, text: string) => void;
  /** Path of an emptied log file. */
  readonly log: (name: string) => string;
}

const reasonOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));

/** Gives what root makes in somebody's folder to that person, who starts the product without root later. */
function giveTo(owner: { uid: number; gid: number }, path: string): void {
  if (process.getuid?.() === 0) chownSync(path, owner.uid, owner.gid);
}

/** Opens the data folder, made when it is missing, and proves that this user may write to it. */
export function openDataFolder(path: string, checkout: string): Outcome<DataFolder, StartProblem> {
  const user = userInfo().username;
  try {
    if (statSync(path, { throwIfNoEntry: false }) === undefined) {
      mkdirSync(path, { mode: 0o755 });
      giveTo(statSync(checkout), path);
    }
    const owner = statSync(path);
    const self = process.getuid?.();
    if (self !== undefined && self !== 0 && owner.uid !== self) {
      const name = findAccount(String(owner.uid))?.name ?? `user ${owner.uid}`;
      return fail(problem('DATA_FOLDER_FOREIGN', { folder: path, owner: name, user }));
    }
    const logs = join(path, 'log');
    mkdirSync(logs, { recursive: true });
    giveTo(owner, logs);
    const probe = join(path, `.probe-${process.pid}`);
    closeSync(openSync(probe, 'w'));
    unlinkSync(probe);
    return succeed({
      path,
      writeNew: (name, text) => {
        const file = join(path, name);
        writeFileSync(file, text, { mode: 0o600, flag: 'wx' });
        giveTo(owner, file);
      },
      log: (name) => {
        const file = join(logs, `${name}.log`);
        writeFileSync(file, '');
        giveTo(owner, file);
        return file;
      },
    });
  } catch (error) {
    return fail(problem('DATA_FOLDER_NOT_WRITABLE', { folder: path, user, reason: reasonOf(error) }));
  }
}
