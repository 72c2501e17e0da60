import { formatNumber } from '@flangewise/quantities';
import type { Box } from './contour.js';
import type { DrawingModel } from './drawing-model.js';
import type { Dimension } from './scene.js';
import type { SetLayout } from './set-layout.js';

interface Surroundings {
  readonly model: DrawingModel;
  readonly bounds: Box;
  readonly floor: number;
  readonly broken: boolean;
}

/** Lengths on the drawing are given in full millimetres, small ones to a tenth. */
const shown = (millimetres: number): string => formatNumber(millimetres, millimetres < 100 ? 3 : 4);

const ofSet = (layout: SetLayout, x: number): Dimension[] => {
  const { inner, depth, girth, detail, bottom } = layout;
  const right = x + girth + 14 * detail;
  return [
    {
      kind: 'vertical',
      from: [x + layout.rim, 0],
      to: [x, depth],
      at: right,
      text: shown(depth),
    },
    {
      kind: 'horizontal',
      from: [x - inner, bottom * 0.4],
      to: [x + inner, bottom * 0.4],
      at: (layout.mantle?.bottom ?? bottom) + 24 * detail,
      text: `Ø ${shown(2 * inner)}`,
    },
  ];
};

/** Inner diameter and depth of every set, and the height over the floor. */
export const dimensionsOf = (
  sets: readonly { readonly layout: SetLayout; readonly x: number }[],
  { model, bounds, floor, broken }: Surroundings,
): Dimension[] => {
  const first = sets[0];
  if (first === undefined) return [];
  const height = model.frame?.topHeight;
  const bottom =
    model.frame === null && model.lift === null ? bounds.bottom : floor + 20 * first.layout.detail;
  const overall: Dimension[] =
    broken && height === undefined
      ? []
      : [
          {
            kind: 'vertical',
            from: [first.x, bounds.top],
            to: [bounds.left, bottom],
            at: bounds.left - 16 * first.layout.detail,
            text: shown(height ?? bottom - bounds.top),
          },
        ];
  return [...sets.flatMap(({ layout, x }) => ofSet(layout, x)), ...overall];
};
