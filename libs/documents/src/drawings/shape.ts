import { box, type Contour, type Point } from './contour.js';
import type { Fill, HatchMaterial, LineType, Shape } from './scene.js';

interface HatchTurn {
  readonly turned?: boolean;
  readonly close?: boolean;
}

/** A body that the section cuts. */
export const cut = (contour: Contour, material: HatchMaterial, turn: HatchTurn = {}): Shape => ({
  kind: 'area',
  contour,
  line: 'cut',
  fill: { material, turned: turn.turned ?? false, close: turn.close ?? false },
});

/** A body in view. */
export const seen = (contour: Contour, fill: Fill = 'part', line: LineType = 'edge'): Shape => ({
  kind: 'area',
  contour,
  line,
  fill,
});

export const seenBox = (from: Point, to: Point, fill: Fill = 'part'): Shape => seen(box(from, to), fill);

export const stroke = (line: LineType, ...contours: readonly Contour[]): Shape => ({
  kind: 'stroke',
  contours,
  line,
});

export const circle = (
  centre: Point,
  radius: number,
  look: { fill?: Fill; line?: LineType } = {},
): Shape => ({
  kind: 'circle',
  centre,
  radius,
  line: look.line ?? 'edge',
  fill: look.fill ?? 'part',
});
