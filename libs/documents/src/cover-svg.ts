import { setName, type SlotPath } from '@flangewise/model';
import { coverPlanOf } from './drawings/cover-plan.js';
import type { DrawingModel } from './drawings/drawing-model.js';
import { moveParts } from './drawings/move-shape.js';
import { boundsOf } from './drawings/scene-bounds.js';
import type { Scene } from './drawings/scene.js';
import { sceneToSvg } from './drawings/scene-to-svg.js';

/** The covers of all sets from above, side by side; undefined while no cover is chosen. */
const coversOf = (model: DrawingModel): Scene | undefined => {
  const plans = model.sets.flatMap((set) => {
    const plan = coverPlanOf(model, set.index);
    return plan === undefined ? [] : [{ plan, name: setName(set.label, set.index) }];
  });
  const [first] = plans;
  if (first === undefined) return undefined;
  let from = first.plan.bounds.left;
  const placed = plans.map(({ plan, name }) => {
    const { left, right, bottom } = plan.bounds;
    const x = from - left;
    from += 1.1 * (right - left);
    return { parts: moveParts(plan.parts, [x, 0]), label: { at: [x, bottom] as const, text: name } };
  });
  const parts = placed.flatMap((one) => one.parts);
  return {
    ...first.plan,
    bounds: boundsOf(parts),
    parts,
    slots: plans.flatMap(({ plan }) => plan.slots.filter(({ set }) => set !== null)),
    labels: plans.length === 1 ? [] : placed.map(({ label }) => label),
  };
};

/** Who sits on which port, as an SVG file that carries its own colours; undefined while no cover is chosen. */
export const coverSvg = (
  model: DrawingModel,
  numbers?: ReadonlyMap<SlotPath, number>,
): string | undefined => {
  const scene = coversOf(model);
  if (scene === undefined) return undefined;
  const size = {
    width: 760 * Math.max(1, scene.labels.length),
    height: 620,
    callouts: 'none',
    standalone: true,
  } as const;
  const svg = sceneToSvg(scene, numbers === undefined ? size : { ...size, numbers });
  return `<?xml version="1.0" encoding="UTF-8"?>\n${svg}\n`;
};
