import { parseSlotPath, type SlotPath } from '@flangewise/model';
import type { DrawingModel } from '../drawings/drawing-model.js';
import { denominators, isoScale, type Place, sectionForPaper } from '../drawings/iso-scale.js';
import { numberSystem } from '../drawings/number-system.js';
import type { Scene } from '../drawings/scene.js';
import { detailSlots, vesselDetailOf } from '../drawings/vessel-detail.js';

/** A drawing on a sheet, at a scale `1 : denominator`, in a box of paper millimetres. */
export interface FigureView {
  readonly caption: string;
  readonly scene: Scene;
  readonly denominator: number;
  readonly place: Place;
}

export interface Figures {
  /** Section of a single set, or the general arrangement of several. */
  readonly first: readonly FigureView[];
  /** Sections of single sets where there are several, by their place among the drawn sets. */
  readonly sets: readonly (readonly FigureView[])[];
  /** One number a slot, the same on every sheet and on screen. */
  readonly numbers: ReadonlyMap<SlotPath, number>;
}

/** Height that a drawing takes with its dimensions, and that its numbers need at least [mm]. */
const heightOf = (scene: Scene, denominator: number): number => {
  const lowest = Math.max(
    scene.bounds.bottom,
    ...scene.dimensions.flatMap(({ kind, at }) => (kind === 'horizontal' ? [at] : [])),
  );
  const drawn = (lowest - scene.bounds.top) / denominator + (scene.labels.length > 0 ? 15 : 8);
  return Math.max(drawn, scene.slots.length * 3.6);
};

const without = (scene: Scene, drop: (path: SlotPath) => boolean): Scene => ({
  ...scene,
  slots: scene.slots.filter(({ path }) => !drop(path)),
});

const isInDetail = (path: SlotPath): boolean => {
  const parsed = parseSlotPath(path);
  return parsed !== undefined && detailSlots.has(parsed.slot);
};

const scaleText = (denominator: number): string => `1 : ${String(denominator)}`;

interface Wanted {
  readonly model: DrawingModel;
  readonly place: Place;
  readonly set: number;
  readonly letter: string;
}

/** A drawing with the numbers of its own slots. */
const figure = (scene: Scene, denominator: number, rest: { width: number; caption: string }): FigureView => ({
  caption: rest.caption,
  scene,
  denominator,
  place: { width: rest.width, height: heightOf(scene, denominator) },
});

/** From this scale on the inside of a vessel is too small to read. */
const coarse = 10;

/**
 * The section of one set; where its vessel comes out small, the vessel again at a larger scale under it, and
 * the whole one step smaller if that makes room.
 */
const setFigures = ({ model, place, set, letter }: Wanted): FigureView[] => {
  const whole = sectionForPaper(model, place, model.sets.length > 1 ? set : undefined);
  if (whole === null) return [];
  const { scene, denominator } = whole;
  const name = `${letter}–${letter}`;
  const captionAt = (n: number): string =>
    `Section ${name}, ${scaleText(n)}${scene.broken ? ', stand drawn shortened' : ''}.`;
  const single = { caption: captionAt(denominator), scene, denominator, place };
  const detail = denominator >= coarse ? vesselDetailOf(model, set) : undefined;
  if (detail === undefined) return [single];
  const outside = {
    ...without(scene, isInDetail),
    dimensions: scene.dimensions.filter(({ of }) => of !== 'vessel'),
  };
  const steps = denominators.filter((n) => n >= denominator).slice(0, 2);
  const pairs = steps.map((n) => {
    const above = figure(outside, n, { width: place.width, caption: captionAt(n) });
    const left = { width: place.width, height: place.height - above.place.height - 8 };
    return { above, larger: isoScale(detail, left), fits: left.height > 40 };
  });
  const pair = pairs.find(
    ({ above, larger, fits }) => fits && larger < Math.min(denominator, above.denominator),
  );
  if (pair === undefined) return [single];
  const caption = `Vessel of section ${name}, ${scaleText(pair.larger)}.`;
  return [pair.above, figure(detail, pair.larger, { width: place.width, caption })];
};

/** Names of the sections, in order. */
export const letters = ['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H'] as const;

/** All drawings of a specification with one numbering; `places` is the room on the first sheet and on those of the sets. */
export const figuresOf = (
  model: DrawingModel,
  places: { readonly first: Place; readonly set: Place },
): Figures => {
  const general = sectionForPaper(model, places.first);
  if (general === null) return { first: [], sets: [], numbers: new Map() };
  const numbers = numberSystem(model);
  if (model.sets.length === 1) {
    const set = model.sets[0]?.index ?? 0;
    const first = setFigures({ model, place: places.first, set, letter: 'A' });
    return { first, sets: [], numbers };
  }
  const overview: FigureView = {
    caption: `General arrangement, ${scaleText(general.denominator)}.`,
    scene: { ...general.scene, slots: [] },
    denominator: general.denominator,
    place: places.first,
  };
  const sets = model.sets.map(({ index }, i) =>
    setFigures({ model, place: places.set, set: index, letter: letters[i] ?? 'A' }).map((one) =>
      i === 0 ? one : { ...one, scene: without(one.scene, (path) => path.startsWith('frame.')) },
    ),
  );
  return { first: [overview], sets, numbers };
};
