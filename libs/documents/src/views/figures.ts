import { parseSlotPath, type SlotPath } from '@flangewise/model';
import type { DrawingModel } from '../drawings/drawing-model.js';
import { isoScale, type Place, sectionForPaper } from '../drawings/iso-scale.js';
import { placeAnchors } from '../drawings/place-anchors.js';
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
  /** Beside the tables of the first sheet. */
  readonly first: readonly FigureView[];
  /** Sections of single sets, on sheets of their own. */
  readonly sets: readonly { readonly heading: string; readonly figures: readonly FigureView[] }[];
  /** One number a slot, the same on every sheet. */
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

/** The section of one set; where it comes out small and leaves room, its vessel again at a larger scale. */
const setFigures = ({ model, place, set, letter }: Wanted): FigureView[] => {
  const whole = sectionForPaper(model, place, model.sets.length > 1 ? set : undefined);
  if (whole === null) return [];
  const { scene, denominator } = whole;
  const broken = scene.broken ? ', stand drawn shortened' : '';
  const caption = `Section ${letter}–${letter}, ${scaleText(denominator)}${broken}.`;
  const height = heightOf(scene, denominator);
  const left = { width: place.width, height: place.height - height - 6 };
  const detail = denominator >= 10 ? vesselDetailOf(model, set) : undefined;
  const larger = detail === undefined ? denominator : isoScale(detail, left);
  if (detail === undefined || larger >= denominator || left.height < 30)
    return [{ caption, scene, denominator, place }];
  const shown = without(scene, isInDetail);
  return [
    {
      caption,
      scene: shown,
      denominator,
      place: { width: place.width, height: heightOf(shown, denominator) },
    },
    {
      caption: `Vessel of section ${letter}–${letter}, ${scaleText(larger)}.`,
      scene: detail,
      denominator: larger,
      place: { width: place.width, height: Math.min(left.height, heightOf(detail, larger)) },
    },
  ];
};

const numbered = (
  figures: readonly FigureView[],
  all: readonly SlotPath[],
): ReadonlyMap<SlotPath, number> => {
  const order = figures.flatMap(({ scene }) => placeAnchors(scene).map(({ path }) => path));
  const rest = all
    .filter((path) => !order.includes(path))
    .toSorted((a, b) => Number(a.endsWith('.material')) - Number(b.endsWith('.material')));
  return new Map([...new Set([...order, ...rest])].map((path, i) => [path, i + 1]));
};

const letters = ['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H'] as const;

/** Room for a section on a sheet of its own [mm]. */
const wholeSheet: Place = { width: 176, height: 196 };

/** All drawings of a specification with one numbering. `place` is the room on the first sheet. */
export const figuresOf = (model: DrawingModel, place: Place): Figures => {
  const general = sectionForPaper(model, place);
  const all = general?.scene.slots.map(({ path }) => path) ?? [];
  if (general === null || model.sets.length === 1) {
    const first =
      general === null ? [] : setFigures({ model, place, set: model.sets[0]?.index ?? 0, letter: 'A' });
    return { first, sets: [], numbers: numbered(first, all) };
  }
  const overview: FigureView = {
    caption: `General arrangement, ${scaleText(general.denominator)}.`,
    scene: { ...general.scene, slots: [] },
    denominator: general.denominator,
    place,
  };
  const sets = model.sets.map(({ index, label }, i) => ({
    heading: `Section ${letters[i] ?? 'A'}–${letters[i] ?? 'A'}, ${label ?? `set ${String(index + 1)}`}`,
    figures: setFigures({ model, place: wholeSheet, set: index, letter: letters[i] ?? 'A' }).map((figure) =>
      i === 0 ? figure : { ...figure, scene: without(figure.scene, (path) => path.startsWith('frame.')) },
    ),
  }));
  return {
    first: [overview],
    sets,
    numbers: numbered(
      sets.flatMap(({ figures }) => figures),
      all,
    ),
  };
};
