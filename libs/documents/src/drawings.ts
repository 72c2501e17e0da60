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
export { arrangeSheet, type Callout, type Sheet, type SheetFrame } from './drawings/arrange-sheet.js';
export { type DrawingColour, drawingStyle } from './drawings/drawing-style.js';
export { sceneToSvg, type SvgOptions } from './drawings/scene-to-svg.js';
export { numberSystem } from './drawings/number-system.js';
export { sectionOf, type SectionOptions } from './drawings/section.js';
export { type MarkPiece, statusKeys, statusMarks } from './drawings/status-mark.js';
export { coverPlanOf } from './drawings/cover-plan.js';
export { type NozzleTable, nozzleTablesOf } from './views/nozzle-tables.js';
export { thumbnailSvg, type ThumbnailOptions } from './drawings/thumbnail.js';
export { vesselDetailOf } from './drawings/vessel-detail.js';
export { checkCountText, type CheckRow, checkRowsOf } from './views/check-rows.js';
export { stepValueText } from './views/figure-text.js';
export { type IndexEntry, type RuleIndex, ruleIndexesOf } from './views/rule-index.js';
