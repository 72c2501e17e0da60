import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { run } from '../testing/run.js';

vi.setConfig({ testTimeout: 60_000 });

const inquiry = (name: string): string =>
  join(import.meta.dirname, '../../../../tests/acceptance/inquiries', `${name}.json`);
const system = (name: string): string =>
  join(import.meta.dirname, '../../../../tests/acceptance/systems', `${name}.json`);

/** The points of a section, each as one line. */
const pointsOf = (out: string, heading: RegExp): readonly string[] => {
  const section = out.split('\n\n').find((part) => heading.test(part)) ?? '';
  return section
    .split(/\n {2}- /)
    .slice(1)
    .map((point) => point.replaceAll(/\s+/g, ' '));
};

it('nothing is said twice where a note of a system is a caution', async () => {
  const { out } = await run(['solve', inquiry('02-hydrochloric-acid'), '--most', '1']);
  const cautions = pointsOf(out, /^Cautions/);
  expect(cautions.length).toBeGreaterThan(2);
  expect(pointsOf(out, /^About A/).filter((note) => cautions.includes(note))).toEqual([]);
});

describe('what is possible where nothing fits', () => {
  it('is told in one sentence of an inquiry', async () => {
    const { out } = await run(['narrow', inquiry('07-glass-16-bar')]);
    expect(out).toContain('Nothing of the range fits what was said');
    expect(out).not.toContain('sets[0].vessel');
  });

  it('lists the slots of a system that mend it, and no other', async () => {
    const { out } = await run(['narrow', system('01-hydrogenation-broken')]);
    expect(out).toMatch(/changed alone, mends it(.*\n)*.*sets\[0\]\.vessel +1 of \d+/);
    expect(out).not.toContain('sets[0].closure');
  });
});

it('a conflict names its members once', async () => {
  const { out } = await run(['explain', inquiry('07-glass-16-bar')]);
  const conflict = out.split('\n\n').find((part) => part.startsWith('Conflict')) ?? '';
  expect(conflict.match(/glass vessel/g)).toHaveLength(1);
  expect(conflict).toContain('- pressure 16 bar(g) (process.pressure.highest)');
});

it('large numbers of the steps are grouped', async () => {
  const { out } = await run(['calc', 'closure.endForce', '--input', '-'], {
    gasketDiameterM: 0.2,
    pressurePaGauge: 6e6,
  });
  expect(out).toMatch(/188 495\.6 N\b/);
});

it('the cheapest is told as a price, not as a proof', async () => {
  const { out } = await run(['solve', inquiry('02-hydrochloric-acid'), '--most', '1']);
  expect(out).toContain('none in the range is cheaper');
  expect(out).not.toContain('is proved');
});
