import { describe, expect, it } from 'vitest';
import { arc, below, boxAround, flattened, mirrored, pathData, polyline, reversed } from './contour.js';

describe('contour', () => {
  it('draws arcs that stay on their circle', () => {
    const points = flattened(arc({ centre: [10, -5], radius: 40, from: 0, to: 270 }));
    for (const [x, y] of points) expect(Math.hypot(x - 10, y + 5)).toBeCloseTo(40, 3);
  });

  it('walks a curve back along the same points', () => {
    const there = arc({ centre: [0, 0], radius: [30, 12], from: 0, to: 90 });
    const back = flattened(reversed(there)).toReversed();
    flattened(there).forEach(([x, y], i) => {
      expect(back[i]![0]).toBeCloseTo(x, 9);
      expect(back[i]![1]).toBeCloseTo(y, 9);
    });
  });

  it('mirrors about the axis', () => {
    expect(pathData(mirrored(polyline([1, 2], [3, 4])), false)).toBe('M-1 2L-3 4');
  });

  it('keeps what lies below a level', () => {
    const square = [
      [0, 0],
      [10, 0],
      [10, 10],
      [0, 10],
    ] as const;
    expect(boxAround(below(square, 4))).toEqual({ left: 0, top: 4, right: 10, bottom: 10 });
    expect(below(square, 11)).toEqual([]);
    expect(below(square, -1)).toHaveLength(4);
  });
});
