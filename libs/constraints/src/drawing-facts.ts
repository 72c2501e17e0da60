import { evaluate, vessel as vesselCalculation } from '@flangewise/engineering';
import {
  type Assessment,
  frameSlots,
  type Item,
  type ItemOf,
  type RuleResult,
  setSlots,
  type SlotName,
  slotPath,
  type SlotPath,
  type Status,
  statusRank,
  type System,
} from '@flangewise/model';
import { type Chosen, chosenIn } from './chosen.js';
import { conditionsOf } from './conditions-of.js';
import type { Range } from './range.js';
import { coverPorts } from './rules/accessories/ports.js';
import { setPortsOf } from './set-ports.js';

type ItemsBySlot = { readonly [S in SlotName]?: ItemOf<S> };

/** What a drawing of the system shows: parts by slot, levels of the liquid, who sits on which port, what fails where. */
export interface DrawingFacts {
  readonly title: string;
  readonly frame: ItemsBySlot;
  readonly sets: readonly {
    readonly label?: string;
    readonly count: number;
    readonly items: ItemsBySlot;
    readonly levels?: { readonly coldM: number; readonly hotM: number };
    readonly ports: Readonly<Record<string, SlotPath>>;
  }[];
  readonly parallel: boolean;
  readonly verdicts: Readonly<Partial<Record<SlotPath, { readonly status: Status; readonly text?: string }>>>;
}

const itemsIn = (names: readonly SlotName[], chosen: Chosen): ItemsBySlot =>
  Object.fromEntries(
    names.flatMap((slot): [SlotName, Item][] => {
      const item = chosen(slot);
      return item === undefined || item === null ? [] : [[slot, item]];
    }),
  ) as ItemsBySlot;

const levelOf = (vessel: ItemOf<'vessel'>, volumeM3: number): number | undefined => {
  const { geometry } = vessel;
  const outcome = evaluate(vesselCalculation, {
    innerDiameterM: geometry.innerDiameterM,
    cylinderLengthM: geometry.cylinderLengthM,
    wallThicknessM: geometry.wallThicknessM,
    endThicknessM: geometry.endThicknessM,
    form: geometry.endForm,
    // Only the level is asked for; the mass that follows from a density is not.
    densityKgPerM3: 1,
    fillVolumeM3: Math.min(volumeM3, vessel.innerVolumeL / 1000),
  });
  return outcome.ok ? outcome.value.fillDepthM : undefined;
};

const levelsOf = (system: System, set: number, items: ItemsBySlot) => {
  const { batchVolumeM3, hotVolumeM3 } = conditionsOf(system, set);
  if (items.vessel === undefined || batchVolumeM3 === undefined) return {};
  const coldM = levelOf(items.vessel, batchVolumeM3);
  const hotM = levelOf(items.vessel, hotVolumeM3 ?? batchVolumeM3);
  return coldM === undefined || hotM === undefined ? {} : { levels: { coldM, hotM } };
};

/** Ports of the cover, and those that a part on one of them offers, with who sits there. */
const portsOf = (chosen: Chosen, set: number): Readonly<Record<string, SlotPath>> => {
  const placed = setPortsOf(coverPorts, chosen)?.assignment.placed ?? [];
  return Object.fromEntries(placed.map(({ port, user }) => [port, slotPath(user.slot, set)]));
};

const percent = (utilisation: number): string => `${String(Math.ceil(utilisation * 100))} %`;

/** Worst first, then the tightest: what is written beside the callout of a slot. */
const isWorse = (a: RuleResult, b: RuleResult): boolean =>
  statusRank[a.status] < statusRank[b.status] ||
  (a.status === b.status && (a.utilisation ?? -1) > (b.utilisation ?? -1));

const verdictsOf = (results: readonly RuleResult[]): DrawingFacts['verdicts'] => {
  const worst = new Map<string, RuleResult>();
  for (const result of results) {
    if (result.kind !== 'hard') continue;
    for (const path of result.slots) {
      const before = worst.get(path);
      if (before === undefined || isWorse(result, before)) worst.set(path, result);
    }
  }
  return Object.fromEntries(
    [...worst].map(([path, { status, utilisation }]) => [
      path,
      { status, ...(utilisation === undefined || utilisation < 0 ? {} : { text: percent(utilisation) }) },
    ]),
  );
};

/** Everything that a drawing needs and that only the engineering knows. */
export const drawingFactsOf = (system: System, range: Range, assessment?: Assessment): DrawingFacts => ({
  title: system.inquiry.title,
  frame: itemsIn(frameSlots, chosenIn(system, 0, range.items)),
  sets: system.sets.map((set, index) => {
    const chosen = chosenIn(system, index, range.items);
    const items = itemsIn(setSlots, chosen);
    return {
      ...(set.label === undefined ? {} : { label: set.label }),
      count: set.count,
      items,
      ...levelsOf(system, index, items),
      ports: portsOf(chosen, index),
    };
  }),
  parallel: system.inquiry.arrangement === 'parallel',
  verdicts: verdictsOf(assessment?.results ?? []),
});
