import type { DrawingModel } from './drawings/drawing-model.js';
import { sceneToSvg } from './drawings/scene-to-svg.js';
import { sectionOf } from './drawings/section.js';

/** The section with callouts as an SVG file that carries its own colours; undefined while no vessel is chosen. */
export const sectionSvg = (model: DrawingModel): string | undefined => {
  const scene = sectionOf(model, { stand: 'short' });
  return scene === undefined
    ? undefined
    : `<?xml version="1.0" encoding="UTF-8"?>\n${sceneToSvg(scene, { width: 912, height: 760, standalone: true })}\n`;
};
