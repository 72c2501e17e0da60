import { existsSync, mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it, onTestFinished, vi } from 'vitest';
import { openDataFolder } from './data-folder.js';
import { readSecrets } from './secrets.js';

function parent(): string {
  const folder = mkdtempSync(join(tmpdir(), 'flangewise-folder-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  return folder;
}

it('makes the folder and draws secrets that only its owner may read, once', () => {
  const path = join(parent(), 'data');
  const data = openDataFolder(path, tmpdir());
  if (!data.ok) throw new Error(data.error.message);
  const first = readSecrets(data.value);
  expect(first.ok).toBe(true);
  expect(readSecrets(data.value)).toEqual(first);
  expect(statSync(join(path, 'secrets.json')).mode & 0o777).toBe(0o600);
});

it('says whose the folder is when it belongs to somebody else', () => {
  const path = parent();
  const stranger = statSync(path).uid + 12_345;
  const getuid = vi.spyOn(process, 'getuid').mockReturnValue(stranger);
  onTestFinished(() => getuid.mockRestore());
  const data = openDataFolder(path, tmpdir());
  expect(data).toMatchObject({ ok: false, error: { code: 'DATA_FOLDER_FOREIGN' } });
});

it('says that the folder cannot be made', () => {
  const path = join(parent(), 'missing', 'data');
  expect(openDataFolder(path, tmpdir())).toMatchObject({
    ok: false,
    error: { code: 'DATA_FOLDER_NOT_WRITABLE' },
  });
  expect(existsSync(path)).toBe(false);
});

it('says that the secrets cannot be read, and does not overwrite them', () => {
  const path = parent();
  writeFileSync(join(path, 'secrets.json'), '{"authSecret":');
  const data = openDataFolder(path, tmpdir());
  if (!data.ok) throw new Error(data.error.message);
  expect(readSecrets(data.value)).toMatchObject({ ok: false, error: { code: 'SECRETS_NOT_READABLE' } });
});
