import { type Point, shifted } from './contour.js';
import type { Part, Shape } from './scene.js';

const moveShape = (shape: Shape, by: Point): Shape => {
  const moved = ([x, y]: Point): Point => [x + by[0], y + by[1]];
  switch (shape.kind) {
    case 'area':
      return { ...shape, contour: shifted(shape.contour, by) };
    case 'stroke':
      return { ...shape, contours: shape.contours.map((contour) => shifted(contour, by)) };
    case 'circle':
      return { ...shape, centre: moved(shape.centre) };
    case 'text':
      return { ...shape, at: moved(shape.at) };
  }
};

export const moveParts = (parts: readonly Part[], by: Point): Part[] =>
  parts.map((part) => ({ ...part, shapes: part.shapes.map((shape) => moveShape(shape, by)) }));
