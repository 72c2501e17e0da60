import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Assessment, OfferAnswer, SystemInput } from '@flangewise/model';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { runJson } from '../testing/run.js';

const inquiry = join(import.meta.dirname, '../../../../tests/acceptance/inquiries/06-high-pressure.json');
vi.setConfig({ testTimeout: 60_000 });

const approver = 'A. Approver';

/** A special vessel with a mantle that has to be widened for it. */
let system: SystemInput;
let folder: string;

beforeAll(async () => {
  system = (await runJson(['solve', inquiry, '--take', 'A'])).answer as SystemInput;
  folder = await mkdtemp(join(tmpdir(), 'released-'));
}, 60_000);

afterAll(() => rm(folder, { recursive: true }));

const releasedSystem = (): SystemInput => ({
  ...system,
  specials: (system.specials ?? []).map((special) => ({ ...special, releasedBy: approver })),
  offer: { discountPercent: '12', discountReleasedBy: approver },
});

const ofSpecials = (blocking: readonly string[]): readonly string[] =>
  blocking.filter((sentence) => /special|discount/i.test(sentence));

describe('a special', () => {
  it('keeps a watermark until it is released, and that is said', async () => {
    const { answer, said } = await runJson(['check', '-'], system);
    expect(ofSpecials((answer as Assessment).blocking).length).toBeGreaterThan(1);
    expect(said).toContain('not released: its offer carries a watermark until an approver releases it');
    expect(said).toContain('specials[0].releasedBy');
  });

  it('that the system says is released stops nothing, and who released it is said', async () => {
    const { answer, said } = await runJson(['check', '-'], releasedSystem());
    expect(ofSpecials((answer as Assessment).blocking)).toEqual([]);
    expect(said).toMatch(/^Special vessel 2 L.*: released by A\. Approver, as the system says\.$/m);
    expect(said).not.toContain('watermark');
  });

  it('that nobody chose releases nothing', async () => {
    const released = releasedSystem();
    const [special] = released.specials ?? [];
    if (special === undefined) throw new Error('no special');
    const specials = [...(system.specials ?? []), { ...special, set: 1, volumeL: 3 }];
    const { answer } = await runJson(['check', '-'], { ...system, specials });
    expect(ofSpecials((answer as Assessment).blocking).length).toBeGreaterThan(1);
  });

  it('is offered with the name of whoever released it and the discount', async () => {
    const made = await runJson(['offer', '-', '--out', join(folder, 'offer')], releasedSystem());
    expect(ofSpecials((made.answer as OfferAnswer).blocking)).toEqual([]);
    expect(made.said).toContain('Discount of 12 %: released by A. Approver');
    const assessment = JSON.parse(
      await readFile(join(folder, 'offer', 'assessment.json'), 'utf8'),
    ) as Assessment;
    expect(ofSpecials(assessment.blocking)).toEqual([]);
  });
});
