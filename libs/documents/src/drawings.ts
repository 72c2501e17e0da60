export type { Box, Point } from './drawings/contour.js';
export type {
  DrawingInput,
  DrawingModel,
  DrawnSet,
  ItemsBySlot,
  Levels,
  SlotVerdict,
} from './drawings/drawing-model.js';
export { drawingModelOf } from './drawings/drawing-model-of.js';
export type { Dimension, Part, Scene, SceneSlot, Shape } from './drawings/scene.js';
