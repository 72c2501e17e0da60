import { type Box, boxAround, flattened, type Point } from './contour.js';
import type { Part, Shape } from './scene.js';

const pointsOf = (shape: Shape): Point[] => {
  switch (shape.kind) {
    case 'area':
      return flattened(shape.contour);
    case 'stroke':
      return shape.contours.flatMap(flattened);
    case 'circle': {
      const { centre, radius } = shape;
      return [
        [centre[0] - radius, centre[1] - radius],
        [centre[0] + radius, centre[1] + radius],
      ];
    }
    case 'text': {
      const half = shape.text.length * shape.size * 0.3;
      return [
        [shape.at[0] - half, shape.at[1] - shape.size / 2],
        [shape.at[0] + half, shape.at[1] + shape.size / 2],
      ];
    }
  }
};

const none: Box = { left: 0, top: 0, right: 0, bottom: 0 };

export const boundsOf = (parts: readonly Part[]): Box =>
  boxAround(parts.flatMap(({ shapes }) => shapes.flatMap(pointsOf))) ?? none;
