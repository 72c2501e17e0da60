import { describe, expect, it } from 'vitest';
import { endOf } from './end-form.js';

describe('end of a vessel', () => {
  it.each([
    // DIN 28011:2012, height of the dish h2 = 0.1935 Da − 0.455 s, Da = 800 mm, s = 10 mm.
    ['torispherical DIN 28011', 0.1935 * 800 - 0.455 * 10],
    // DIN 28013:2012, h2 = 0.255 Da − 0.635 s.
    ['torispherical DIN 28013', 0.255 * 800 - 0.635 * 10],
  ] as const)('%s is as deep as the standard says', (form, depth) => {
    expect(endOf(form, { radius: 390, top: 0, wall: 10 }).depth).toBeCloseTo(depth, 0);
  });

  it.each([
    ['2:1 ellipsoidal', 50],
    ['hemispherical', 100],
    ['flat', 0],
  ] as const)('%s by geometry', (form, depth) => {
    expect(endOf(form, { radius: 100, top: 30, wall: 5 }).depth).toBe(depth);
  });

  it('runs from the cylinder to the axis', () => {
    const line = endOf('torispherical DIN 28011', { radius: 390, top: 500, wall: 10 }).line(0);
    expect(line[0]!.to[0]).toBeCloseTo(390, 9);
    expect(line[0]!.to[1]).toBeCloseTo(500, 9);
    expect(line.at(-1)!.to[0]).toBeCloseTo(0, 9);
  });
});
