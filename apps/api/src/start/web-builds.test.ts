import { existsSync, mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { spawnSync } from 'node:child_process';
import { expect, it, onTestFinished } from 'vitest';
import { holdBuild, removeOldBuilds } from './web-builds.js';

/** A folder of builds, the first the oldest. */
function buildsFolder(...names: string[]): string {
  const folder = mkdtempSync(join(tmpdir(), 'flangewise-builds-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  for (const [index, name] of names.entries()) {
    mkdirSync(join(folder, name));
    utimesSync(join(folder, name), index, index);
  }
  return folder;
}

const left = (folder: string, ...names: string[]): string[] =>
  names.filter((name) => existsSync(join(folder, name)));

it('keeps the two builds that were used last', () => {
  const folder = buildsFolder('a', 'b', 'c', 'd');
  removeOldBuilds(folder);
  expect(left(folder, 'a', 'b', 'c', 'd')).toEqual(['c', 'd']);
});

it('keeps a build as long as somebody runs it', () => {
  const folder = buildsFolder('a', 'b', 'c', 'd');
  const release = holdBuild(join(folder, 'a'));
  utimesSync(join(folder, 'a'), 0, 0);
  removeOldBuilds(folder);
  expect(left(folder, 'a', 'b', 'c', 'd')).toEqual(['a', 'c', 'd']);
  release();
  utimesSync(join(folder, 'a'), 0, 0);
  removeOldBuilds(folder);
  expect(left(folder, 'a', 'b', 'c', 'd')).toEqual(['c', 'd']);
});

it('does not keep a build for a process that ended', () => {
  const folder = buildsFolder('a', 'b', 'c');
  const ended = spawnSync(process.execPath, ['-e', '']).pid;
  writeFileSync(join(folder, 'a', `used-by-${ended}`), '');
  utimesSync(join(folder, 'a'), 0, 0);
  removeOldBuilds(folder);
  expect(left(folder, 'a', 'b', 'c')).toEqual(['b', 'c']);
});
