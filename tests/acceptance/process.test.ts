import { spawn } from 'node:child_process';
import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { OfferAnswer, SolveAnswer } from '@flangewise/model';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { checkout } from '../run/command.js';
import { pathOf } from './examples.js';

interface Ended {
  readonly exit: number | null;
  readonly out: string;
  readonly said: string;
}

/** Runs the command as people do, in a process of its own. */
const flangewise = (argv: readonly string[], stdin = ''): Promise<Ended> =>
  new Promise((resolve, reject) => {
    const child = spawn('npm', ['run', '-s', 'flangewise', '--', ...argv], { cwd: checkout });
    let out = '';
    let said = '';
    child.stdout.on('data', (chunk: Buffer) => (out += chunk.toString()));
    child.stderr.on('data', (chunk: Buffer) => (said += chunk.toString()));
    child.on('error', reject);
    child.on('close', (exit) => {
      resolve({ exit, out, said });
    });
    child.stdin.on('error', () => undefined);
    child.stdin.end(stdin);
  });

let folder: string;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'flangewise-'));
});

afterAll(async () => {
  await rm(folder, { recursive: true });
});

describe('the command in a process of its own', () => {
  it('lists its calculations as JSON on standard output', async () => {
    const { exit, out } = await flangewise(['calc', 'list', '--json']);
    expect(exit).toBe(0);
    const list = JSON.parse(out) as {
      readonly id: string;
      readonly inputs: object;
      readonly source: object[];
    }[];
    expect(list.length).toBeGreaterThan(50);
    for (const { inputs, source } of list) {
      expect(inputs).toHaveProperty('properties');
      expect(source.length).toBeGreaterThan(0);
    }
  });

  it('answers a thousand lines, one for one', async () => {
    const line = (k: number): string =>
      JSON.stringify({
        id: k,
        calculation: 'fluid.vapourPressure',
        inputs: { substance: 'water', temperatureK: 280 + (k % 90) },
      });
    const { exit, out, said } = await flangewise(
      ['calc', '--batch', '-'],
      Array.from({ length: 1000 }, (_, k) => line(k)).join('\n'),
    );
    expect(exit).toBe(0);
    expect(said).toBe('');
    const lines = out
      .trimEnd()
      .split('\n')
      .map((text) => JSON.parse(text) as { readonly id: number; readonly outputs: object });
    expect(lines.map(({ id }) => id)).toEqual(Array.from({ length: 1000 }, (_, k) => k));
    expect(lines.every(({ outputs }) => 'pressurePaAbs' in outputs)).toBe(true);
  });

  it('solves an inquiry and leaves standard output to the answer', async () => {
    const { exit, out, said } = await flangewise([
      'solve',
      pathOf('inquiries', '01-hydrogenation.json'),
      '--json',
      '--most',
      '2',
    ]);
    expect(exit).toBe(0);
    expect((JSON.parse(out) as SolveAnswer).candidates).toHaveLength(2);
    expect(said).toContain('process.media[2].substance');
  });

  it('ends with 1 where nothing fits, with 2 where the input is bad', async () => {
    const impossible = await flangewise(['solve', pathOf('inquiries', '07-glass-16-bar.json')]);
    expect(impossible.exit).toBe(1);
    expect(impossible.out).toContain('Nothing in the range fits');
    const bad = await flangewise(['check', '-'], '{"inquiry": {"title": ""}}');
    expect(bad.exit).toBe(2);
    expect(bad.out).toBe('');
    expect(bad.said).toContain('inquiry.title');
  });

  it('writes all documents of an offer, as large as it says', async () => {
    const out = join(folder, 'offer');
    const { exit, out: answered } = await flangewise([
      'offer',
      pathOf('systems', '01-hydrogenation.json'),
      '--out',
      out,
      '--date',
      '2026-11-24',
      '--json',
    ]);
    expect(exit).toBe(0);
    const { files } = JSON.parse(answered) as OfferAnswer;
    expect((await readdir(out)).sort()).toEqual(files.map(({ name }) => name).sort());
    for (const { name, bytes } of files) {
      const content = await readFile(join(out, name));
      expect(content.byteLength).toBe(bytes);
      if (name.endsWith('.pdf')) expect(content.subarray(0, 5).toString()).toBe('%PDF-');
    }
  });

  it('writes the documents of what is not met for discussion, and ends with 1', async () => {
    const out = join(folder, 'broken');
    const path = pathOf('systems', '01-hydrogenation-broken.json');
    const { exit, out: answered } = await flangewise(['offer', path, '--out', out, '--json']);
    expect(exit).toBe(1);
    const { released, blocking, files } = JSON.parse(answered) as OfferAnswer;
    expect(released).toBe(false);
    expect(blocking.some((text) => text.endsWith(': not met'))).toBe(true);
    expect((await readdir(out)).length).toBe(files.length);
  });

  it('is not troubled by a reader who stops early', async () => {
    const ended = await new Promise<Ended>((resolve, reject) => {
      const shell = spawn('sh', ['-c', 'npm run -s flangewise -- schema system | head -n 1'], {
        cwd: checkout,
      });
      let out = '';
      let said = '';
      shell.stdout.on('data', (chunk: Buffer) => (out += chunk.toString()));
      shell.stderr.on('data', (chunk: Buffer) => (said += chunk.toString()));
      shell.on('error', reject);
      shell.on('close', (exit) => {
        resolve({ exit, out, said });
      });
    });
    expect(ended.out).toBe('{\n');
    expect(ended.said).toBe('');
  });
});
