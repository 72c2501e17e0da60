import type { DrawingModel } from './drawing-model.js';
import type { Scene } from './scene.js';
import { sectionOf } from './section.js';

/** Natural size and reduction scales of ISO 5455, as denominators. */
export const denominators = [1, 2, 5, 10, 20, 50] as const;

/** A place on paper [mm]. */
export interface Place {
  readonly width: number;
  readonly height: number;
}

/** Room at both sides for numbers and leaders, above and below for dimensions [mm]. */
const around = { sides: 19, ends: 6, labels: 7 } as const;

/** The denominator of the largest scale of ISO 5455 at which a drawing with its numbers fits; the last one otherwise. */
export const isoScale = (scene: Scene, place: Place): number => {
  const { bounds, dimensions, labels } = scene;
  const across = dimensions.flatMap(({ kind, at }) => (kind === 'vertical' ? [at] : []));
  const width = Math.max(bounds.right, ...across) - Math.min(bounds.left, ...across);
  const lowest = Math.max(
    bounds.bottom,
    ...dimensions.flatMap(({ kind, at }) => (kind === 'horizontal' ? [at] : [])),
  );
  const height = lowest - bounds.top;
  const ends = around.ends + (labels.length > 0 ? around.labels : 0);
  return (
    denominators.find((n) => width / n <= place.width - around.sides && height / n <= place.height - ends) ??
    50
  );
};

/** The section for a place on paper: its stand is drawn shortened where that allows a larger scale. */
export const sectionForPaper = (
  model: DrawingModel,
  place: Place,
  set?: number,
): { readonly scene: Scene; readonly denominator: number } | null => {
  const of = (stand: 'full' | 'short') => {
    const scene = sectionOf(model, { stand, ...(set === undefined ? {} : { set }) });
    return scene === undefined ? null : { scene, denominator: isoScale(scene, place) };
  };
  const [full, short] = [of('full'), of('short')];
  return full !== null && short !== null && short.denominator < full.denominator ? short : full;
};
