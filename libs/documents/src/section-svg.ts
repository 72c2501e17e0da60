import type { SlotPath } from '@flangewise/model';
import type { DrawingModel } from './drawings/drawing-model.js';
import { sceneToSvg } from './drawings/scene-to-svg.js';
import { sectionOf } from './drawings/section.js';

/**
 * The section with callouts as an SVG file that carries its own colours; undefined while no vessel is chosen.
 *
 * @param numbers numbers of the slots in the other documents of the offer
 */
export const sectionSvg = (
  model: DrawingModel,
  numbers?: ReadonlyMap<SlotPath, number>,
): string | undefined => {
  const scene = sectionOf(model, { stand: 'short' });
  if (scene === undefined) return undefined;
  const size = { width: 912, height: 760, standalone: true };
  const svg = sceneToSvg(scene, numbers === undefined ? size : { ...size, numbers });
  return `<?xml version="1.0" encoding="UTF-8"?>\n${svg}\n`;
};
