import {
  type Assessment,
  frameSlots,
  type NarrowAnswer,
  type RuleResult,
  setSlots,
  type SlotName,
  type SlotPath,
  slotPath,
  slots,
  type Status,
  statusRank,
  type SystemInput,
} from '@flangewise/model';
import { choiceIn } from './edit-system';

/** One slot of the system as the list shows it. */
export interface SlotRow {
  readonly path: SlotPath;
  readonly slot: SlotName;
  readonly set: number | undefined;
  readonly title: string;
  /** Item number, null for none, undefined while nobody has chosen. */
  readonly choice: string | null | undefined;
  /** Number in the drawing; undefined for what is not chosen. */
  readonly number: number | undefined;
  readonly status: Status | undefined;
  /** What is left of the limit of the tightest check of this slot. */
  readonly margin: number | undefined;
  /** The check that decides the state. */
  readonly worst: RuleResult | undefined;
  readonly fit: number | undefined;
  readonly options: number | undefined;
}

const isWorse = (a: RuleResult, b: RuleResult): boolean =>
  statusRank[a.status] < statusRank[b.status] ||
  (a.status === b.status && (a.utilisation ?? -1) > (b.utilisation ?? -1));

export interface RowsInput {
  readonly document: SystemInput;
  readonly assessment: Assessment | undefined;
  readonly narrowed: NarrowAnswer | undefined;
  readonly numbers: ReadonlyMap<SlotPath, number>;
}

/** Every slot of the frame and of all sets, in the order in which an engineer chooses. */
export const slotRowsOf = ({ document, assessment, narrowed, numbers }: RowsInput): readonly SlotRow[] => {
  const worst = new Map<string, RuleResult>();
  for (const result of assessment?.results ?? []) {
    if (result.kind !== 'hard') continue;
    for (const path of result.slots) {
      const before = worst.get(path);
      if (before === undefined || isWorse(result, before)) worst.set(path, result);
    }
  }
  const rowOf = (slot: SlotName, set: number | undefined): SlotRow => {
    const path = slotPath(slot, set);
    const tightest = worst.get(path);
    const answer = narrowed?.slots[path];
    return {
      path,
      slot,
      set,
      title: slots[slot].title,
      choice: choiceIn(document, path),
      number: numbers.get(path),
      status: tightest?.status,
      margin: tightest?.utilisation === undefined ? undefined : 1 - tightest.utilisation,
      worst: tightest,
      fit: answer?.valid.length,
      options: answer === undefined ? undefined : answer.valid.length + answer.refused.length,
    };
  };
  return [
    ...(document.sets ?? []).flatMap((_, set) => setSlots.map((slot) => rowOf(slot, set))),
    ...frameSlots.map((slot) => rowOf(slot, undefined)),
  ];
};
