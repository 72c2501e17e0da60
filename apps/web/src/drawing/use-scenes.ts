import type { DrawingFacts } from '@flangewise/constraints';
import type { SlotPath } from '@flangewise/model';
import {
  arrangeSheet,
  coverPlanOf,
  type DrawingModel,
  drawingModelOf,
  type NozzleTable,
  nozzleTablesOf,
  numberSystem,
  type Scene,
  sectionOf,
  vesselDetailOf,
} from '@flangewise/documents/drawings';
import { useMemo } from 'react';

export interface Scenes {
  /** The whole, standing on its frame; undefined while no vessel is chosen. */
  readonly section: Scene | undefined;
  /** The vessel alone, for narrow screens. */
  readonly detail: Scene | undefined;
  /** The cover from above, with who sits where, and with names alone for where there is little room. */
  readonly cover:
    { readonly seats: Scene; readonly names: Scene; readonly nozzles: NozzleTable['rows'] } | undefined;
  /** Numbers of all chosen slots of all sets, as the documents have them. */
  readonly numbers: ReadonlyMap<SlotPath, number>;
  /** Slots that have a callout: the others are listed beside the drawing. */
  readonly drawn: ReadonlySet<SlotPath>;
}

const nothing: Scenes = {
  section: undefined,
  detail: undefined,
  cover: undefined,
  numbers: new Map(),
  drawn: new Set(),
};

/** A state without a figure is said in its word. */
const spoken = (verdicts: DrawingFacts['verdicts']): DrawingFacts['verdicts'] =>
  Object.fromEntries(
    Object.entries(verdicts).flatMap(([path, verdict]) => {
      if (verdict === undefined) return [];
      const { status, text } = verdict;
      const word = status === 'met' ? {} : { text: status };
      return [[path, { status, ...(text === undefined ? word : { text }) }]];
    }),
  );

/** Numbers and callouts do not hang on the size of the sheet; one for all of them. */
const sheet = { width: 900, height: 660, callouts: 'columns' } as const;

const coverOf = (
  model: DrawingModel,
  set: number,
  numbers: ReadonlyMap<SlotPath, number>,
): Scenes['cover'] => {
  const seats = coverPlanOf(model, set);
  const names = coverPlanOf(model, set, { labels: 'names' });
  if (seats === undefined || names === undefined) return undefined;
  const table = nozzleTablesOf(model, numbers).find((one) => one.set === set);
  return { seats, names, nozzles: table?.rows ?? [] };
};

/** What there is to draw of one vessel set with everything that it shares. */
export function useScenes(facts: DrawingFacts | undefined, set: number): Scenes {
  const model = useMemo(
    () => (facts === undefined ? undefined : drawingModelOf({ ...facts, verdicts: spoken(facts.verdicts) })),
    [facts],
  );
  const numbers = useMemo(
    () => (model === undefined || model.sets.length === 0 ? nothing.numbers : numberSystem(model)),
    [model],
  );
  return useMemo(() => {
    if (model === undefined) return nothing;
    const section = sectionOf(model, { set });
    if (section === undefined) return { ...nothing, numbers };
    const { callouts } = arrangeSheet(section, sheet);
    return {
      section,
      detail: vesselDetailOf(model, set),
      cover: coverOf(model, set, numbers),
      numbers,
      drawn: new Set(callouts.map(({ slot }) => slot.path)),
    };
  }, [model, numbers, set]);
}
