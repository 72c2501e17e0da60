import { formatNumber } from '@flangewise/quantities';
import type { Box } from './contour.js';
import { driveTop } from './draw-drive.js';
import { columnTop } from './draw-lift.js';
import { armHeight, legReach } from './draw-stand.js';
import type { DrawingModel } from './drawing-model.js';
import type { Dimension } from './scene.js';
import type { Floor, StandingSet } from './standing-sets.js';

/** Lengths on the drawing are given in full millimetres, small ones to a tenth. */
const shown = (millimetres: number): string => formatNumber(millimetres, millimetres < 100 ? 3 : 4);

const ofVessel = ({ layout, x, body, upright }: StandingSet): Dimension[] => {
  const { inner, depth, girth, detail, rim } = layout;
  const beside = upright !== 'lift' && layout.mantle === null ? legReach(layout) + 12 * detail : girth;
  return [
    {
      of: 'vessel',
      kind: 'vertical',
      from: [x + rim, 0],
      to: [x, depth],
      at: x + beside + (layout.set.shield === null ? 13 : 24) * detail,
      text: shown(depth),
    },
    {
      of: 'vessel',
      kind: 'horizontal',
      from: [x - inner, layout.cylinder * 0.9],
      to: [x + inner, layout.cylinder * 0.9],
      at: body.bottom + 20 * detail,
      text: `Ø ${shown(2 * inner)}`,
    },
  ];
};

const strokeOf = (model: DrawingModel, { station, x, layout }: StandingSet): Dimension[] => {
  if (model.lift === null || model.lift.moves === 'vessel') return [];
  const u = layout.detail;
  const right = x + station.column;
  return [
    {
      of: 'stroke',
      kind: 'vertical',
      from: [right - 20 * u, columnTop(station, model.lift).y],
      to: [right - 24 * u, armHeight(layout) - 12 * u],
      at: right - 38 * u,
      text: `stroke ${shown(model.lift.stroke)}`,
    },
  ];
};

interface Ground {
  readonly bounds: Box;
  readonly floor: Floor;
}

const overall = (model: DrawingModel, first: StandingSet, { bounds, floor }: Ground): Dimension[] => {
  const { layout, x } = first;
  const bar = first.set.stirrer?.impeller === 'magnetic bar';
  if (model.drive === null || bar) return [];
  const u = layout.detail;
  const stands = model.frame !== null || model.lift !== null;
  const [top, bottom] = [driveTop(layout, model.drive), stands ? floor.y + 20 * u : bounds.bottom];
  if (floor.breakAt !== null && model.frame === null) return [];
  return [
    {
      of: 'height',
      kind: 'vertical',
      from: [x, top],
      to: [bounds.left, bottom],
      at: bounds.left - 12 * u,
      text: shown(model.frame?.topHeight ?? bottom - top),
    },
  ];
};

/** Inner diameter and depth of every set, stroke of the lift, height over the floor. */
export const dimensionsOf = (
  model: DrawingModel,
  sets: readonly StandingSet[],
  ground: Ground,
): Dimension[] => {
  const first = sets[0];
  return [
    ...sets.flatMap(ofVessel),
    ...sets.filter(({ upright }) => upright === 'lift').flatMap((set) => strokeOf(model, set)),
    ...(first === undefined ? [] : overall(model, first, ground)),
  ];
};
