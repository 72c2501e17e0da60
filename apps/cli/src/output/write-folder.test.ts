import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { mayWrite, writeFolder } from './write-folder.js';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const names = ['a.txt', 'b.txt'];

let parent: string;

beforeEach(async () => {
  parent = await mkdtemp(join(tmpdir(), 'offer-'));
});

afterEach(async () => {
  await rm(parent, { recursive: true });
});

describe('writeFolder', () => {
  it('makes the folder with all files, and leaves nothing beside it', async () => {
    const folder = join(parent, 'deep', 'offer');
    const written = await writeFolder(folder, [
      { name: 'a.txt', bytes: bytes('one') },
      { name: 'b.txt', bytes: bytes('two') },
    ]);
    expect(written.ok).toBe(true);
    expect(await readdir(folder)).toEqual(names);
    expect(await readdir(join(parent, 'deep'))).toEqual(['offer']);
  });

  it('replaces an earlier issue as a whole', async () => {
    const folder = join(parent, 'offer');
    await writeFolder(folder, [
      { name: 'a.txt', bytes: bytes('old') },
      { name: 'b.txt', bytes: bytes('old') },
    ]);
    await writeFolder(folder, [{ name: 'a.txt', bytes: bytes('new') }]);
    expect(await readdir(folder)).toEqual(['a.txt']);
    expect(await readFile(join(folder, 'a.txt'), 'utf8')).toBe('new');
    expect(await readdir(parent)).toEqual(['offer']);
  });

  it('leaves the earlier issue untouched where one file cannot be written', async () => {
    const folder = join(parent, 'offer');
    await writeFolder(folder, [{ name: 'a.txt', bytes: bytes('old') }]);
    const written = await writeFolder(folder, [
      { name: 'a.txt', bytes: bytes('new') },
      { name: join('no', 'such', 'folder.txt'), bytes: bytes('new') },
    ]);
    expect(written.ok).toBe(false);
    expect(await readFile(join(folder, 'a.txt'), 'utf8')).toBe('old');
    expect(await readdir(parent)).toEqual(['offer']);
  });
});

describe('mayWrite', () => {
  it('refuses a folder with files of somebody else', async () => {
    await writeFile(join(parent, 'a.txt'), '');
    await writeFile(join(parent, 'thesis.doc'), '');
    const asked = await mayWrite(parent, names);
    expect(asked.ok).toBe(false);
    expect(asked.ok ? [] : asked.error.troubles.map((t) => t.code)).toEqual(['OUTPUT_NOT_EMPTY']);
    expect(asked.ok ? '' : asked.error.troubles[0]?.message).toContain('thesis.doc');
  });

  it('takes a folder that is empty, does not exist, or holds an earlier issue', async () => {
    await mkdir(join(parent, 'earlier'));
    await writeFile(join(parent, 'earlier', 'b.txt'), '');
    for (const folder of [join(parent, 'none'), join(parent, 'earlier')])
      expect((await mayWrite(folder, names)).ok).toBe(true);
    await rm(join(parent, 'earlier'), { recursive: true });
    expect((await mayWrite(parent, names)).ok).toBe(true);
  });

  it('says so where the path is a file', async () => {
    const file = join(parent, 'file');
    await writeFile(file, '');
    const asked = await mayWrite(file, names);
    expect(asked.ok ? '' : asked.error.troubles[0]?.code).toBe('OUTPUT_UNWRITABLE');
  });
});
