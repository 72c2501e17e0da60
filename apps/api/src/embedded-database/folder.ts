import {
  chownSync,
  existsSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  realpathSync,
  rmSync,
  symlinkSync,
} from 'node:fs';
import { join } from 'node:path';
import { fail, succeed, type Outcome } from '@flangewise/model';
import { problem, type StartProblem } from '../start/problems.js';
import { canRead, type Account } from './account.js';

/** Where databases lie whose checkout is closed to every account but root, for instance below /root. */
const openFolder = '/var/lib/flangewise';

/**
 * The folder that holds the database of a data folder, made when it is missing and owned by the account that runs it.
 * Where that account cannot enter the data folder, `postgres` in it is a link to a folder that it can.
 */
export function databaseFolder(data: string, account: Account | undefined): Outcome<string, StartProblem> {
  const place = join(data, 'postgres');
  if (account === undefined) {
    mkdirSync(place, { recursive: true, mode: 0o700 });
    return succeed(realpathSync(place));
  }
  if (!existsSync(place)) {
    rmSync(place, { force: true });
    if (canRead(account, data)) mkdirSync(place, { mode: 0o700 });
    else {
      mkdirSync(openFolder, { recursive: true, mode: 0o755 });
      symlinkSync(mkdtempSync(join(openFolder, 'data-')), place);
    }
    chownSync(place, account.uid, account.gid);
  }
  const folder = realpathSync(place);
  if (!canRead(account, folder))
    return fail(problem('DATA_FOLDER_UNREACHABLE', { folder, account: account.name }));
  return succeed(folder);
}

/** Removes a data folder with its database, wherever that lies. Only for folders that were made for one run. */
export function removeDataFolder(data: string): void {
  const place = join(data, 'postgres');
  if (lstatSync(place, { throwIfNoEntry: false })?.isSymbolicLink() === true && existsSync(place))
    rmSync(realpathSync(place), { recursive: true, force: true });
  rmSync(data, { recursive: true, force: true });
}
