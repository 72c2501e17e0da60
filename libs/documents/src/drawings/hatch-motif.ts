import type { Hatch, HatchMaterial } from './scene.js';
import type { Point } from './contour.js';

/** A tile of a hatch: strokes in units of the hatch spacing, repeated and turned. */
export interface HatchMotif {
  readonly tile: Point;
  /** Degrees by which the tiles are turned; neighbours get the opposite. */
  readonly angle: number;
  readonly strokes: readonly {
    readonly points: readonly Point[];
    /** The points are a start, then pairs of a control point and an end. */
    readonly curved?: boolean;
  }[];
}

const line = (...points: readonly Point[]) => ({ points });
const upright = (x: number, height: number) => line([x, 0], [x, height]);

/** One hatch a material class, told apart without colour. */
export const hatchMotifs: Readonly<Record<HatchMaterial, HatchMotif>> = {
  steel: { tile: [1, 1], angle: 45, strokes: [upright(0, 1)] },
  nickel: { tile: [1.3, 1.3], angle: 45, strokes: [upright(0, 1.3), upright(0.36, 1.3)] },
  reactive: { tile: [1.9, 1.9], angle: 45, strokes: [upright(0, 1.9), line([0.95, 0.2], [0.95, 1.2])] },
  aluminium: { tile: [1.55, 1.55], angle: 45, strokes: [upright(0, 1.55)] },
  polymer: { tile: [0.85, 0.85], angle: 45, strokes: [upright(0, 0.85), line([0, 0], [0.85, 0])] },
  glass: {
    tile: [3, 3],
    angle: 0,
    strokes: [
      line([0.3, 1], [0.8, 0.5]),
      line([0.5, 1.3], [1.1, 0.7]),
      line([0.9, 1.3], [1.3, 0.9]),
      line([1.8, 2.5], [2.3, 2]),
      line([2, 2.8], [2.6, 2.2]),
      line([2.4, 2.8], [2.8, 2.4]),
    ],
  },
  insulation: {
    tile: [2.2, 1.4],
    angle: 0,
    strokes: [
      {
        points: [
          [0, 0.7],
          [0.55, -0.6],
          [1.1, 0.7],
          [1.65, 2],
          [2.2, 0.7],
        ],
        curved: true,
      },
    ],
  },
  liquid: {
    tile: [4.4, 2],
    angle: 0,
    strokes: [line([0.3, 0.55], [1.7, 0.55]), line([2.5, 1.5], [3.9, 1.5])],
  },
};

/** Angle and spacing of one part's hatch. */
export const hatchTurn = (hatch: Hatch): { readonly angle: number; readonly spacing: number } => {
  const { angle } = hatchMotifs[hatch.material];
  return { angle: hatch.turned ? -angle : angle, spacing: hatch.close ? 0.78 : 1 };
};
