import { spawnSync } from 'node:child_process';
import { statSync } from 'node:fs';

/** The account under which PostgreSQL runs when the starter is root, which PostgreSQL refuses. */
export interface Account {
  readonly uid: number;
  readonly gid: number;
  readonly name: string;
}

const ask = (...args: string[]): string | undefined => {
  const answer = spawnSync('id', args, { encoding: 'utf8' });
  return answer.status === 0 ? answer.stdout.trim() : undefined;
};

/** The account with this name or number; undefined where the system does not know it. */
export function findAccount(user: string): Account | undefined {
  const [uid, gid, name] = [ask('-u', user), ask('-g', user), ask('-nu', user)];
  if (uid === undefined || gid === undefined || name === undefined) return undefined;
  return { uid: Number(uid), gid: Number(gid), name };
}

/**
 * The account to switch to: the owner of the first of `folders` that exists and is not root's, else `nobody`.
 * Undefined when the starter is not root and no switch is needed.
 */
export function serverAccount(folders: readonly string[]): Account | undefined {
  if (process.getuid?.() !== 0) return undefined;
  const owners = folders.map((folder) => statSync(folder, { throwIfNoEntry: false })?.uid);
  const owner = owners.find((uid) => uid !== undefined && uid !== 0);
  const found = owner === undefined ? undefined : findAccount(String(owner));
  return found ?? findAccount('nobody');
}

/** Whether the account can enter the folder and read the file in it, tried by a process of that account. */
export function canRead(account: Account | undefined, path: string): boolean {
  if (account === undefined) return true;
  const { uid, gid } = account;
  return spawnSync('/bin/sh', ['-c', 'test -r "$0"', path], { uid, gid, cwd: '/' }).status === 0;
}
