import { parseSlotPath, setName, type SlotPath, slots } from '@flangewise/model';
import { formatNumber } from '@flangewise/quantities';
import type { DrawingModel, DrawnPort } from '../drawings/drawing-model.js';

/** The ports of one cover. */
export interface NozzleTable {
  readonly set: number;
  readonly heading: string;
  readonly rows: readonly {
    readonly name: string;
    readonly size: string;
    readonly place: string;
    readonly use: string;
    /** Slot of the part that sits there; null where it is free. */
    readonly slot: SlotPath | null;
  }[];
}

const placeText = ({ circle, angle, tilt }: DrawnPort): string => {
  const place = circle === 0 ? 'centre' : `${formatNumber(angle)}°, Ø ${formatNumber(circle)}`;
  return tilt === 0 ? place : `${place}, tilted ${formatNumber(tilt)}°`;
};

const titleText = (path: SlotPath, numbers: ReadonlyMap<SlotPath, number>): string => {
  const parsed = parseSlotPath(path);
  const number = numbers.get(path);
  return parsed === undefined
    ? path
    : `${number === undefined ? '' : `${String(number)} `}${slots[parsed.slot].title}`;
};

const useText = ({ slot, reducedTo, above }: DrawnPort, numbers: ReadonlyMap<SlotPath, number>): string => {
  if (slot === null) return 'free, plugged';
  const reducer = reducedTo === null ? '' : `, reducer to Ø ${formatNumber(reducedTo)}`;
  const seats = above.map((seat) => `${seat.name.slice(-1)} ${titleText(seat.slot, numbers)}`);
  return `${titleText(slot, numbers)}${reducer}${seats.length === 0 ? '' : `: ${seats.join(', ')}`}`;
};

/** The nozzle schedule: bore, place on its circle, tilt, what sits on it. */
export const nozzleTablesOf = (
  drawing: DrawingModel,
  numbers: ReadonlyMap<SlotPath, number>,
): NozzleTable[] =>
  drawing.sets.flatMap(({ index, label, cover }): NozzleTable[] => {
    if (cover === null || cover.ports.length === 0) return [];
    const name = setName(label, index);
    return [
      {
        set: index,
        heading: drawing.sets.length > 1 ? `Nozzles, ${name}` : 'Nozzles',
        rows: cover.ports.map((port) => ({
          name: port.name,
          size: `Ø ${formatNumber(port.diameter)}`,
          place: placeText(port),
          use: useText(port, numbers),
          slot: port.slot,
        })),
      },
    ];
  });
