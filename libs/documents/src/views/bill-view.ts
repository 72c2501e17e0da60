import { type Item, type Offer, parseSlotPath, setName, type System } from '@flangewise/model';
import { slotTitles } from './slot-titles.js';

/** One line of the bill of materials; numbers stay numbers for the tables that are made of it. */
export interface BillRow {
  readonly position: number;
  readonly item: string;
  readonly name: string;
  readonly slot: string;
  readonly place: string;
  readonly quantity: number;
  readonly wetted: string;
  readonly massKg: number | null;
  readonly leadTimeDays: number | null;
  readonly special: boolean;
  readonly note: string;
}

export interface BillView {
  readonly document: string;
  readonly title: string;
  readonly rows: readonly BillRow[];
}

const placeText = (paths: readonly string[], system: System): string =>
  [
    ...new Set(
      paths.map((path) => {
        const set = parseSlotPath(path)?.set;
        if (set === undefined) return 'frame';
        return setName(system.sets[set]?.label, set);
      }),
    ),
  ].join(', ');

/** The positions of an offer without prices, with what workshop and stores need. */
export const billViewOf = (offer: Offer, system: System, items: ReadonlyMap<string, Item>): BillView => ({
  document: `${offer.number}-${offer.revision}`,
  title: offer.title,
  rows: offer.positions.map((line): BillRow => {
    const item = items.get(line.item);
    return {
      position: line.position,
      item: line.item,
      name: line.name,
      slot: slotTitles(line.slots),
      place: placeText(line.slots, system),
      quantity: line.quantity,
      wetted: item?.wetted.join(', ') ?? '',
      massKg: item?.massKg ?? null,
      leadTimeDays: item?.leadTimeDays ?? null,
      special: line.special,
      note: line.note ?? '',
    };
  }),
});
