import { parseSlotPath, setName, type SlotPath, slots } from '@flangewise/model';
import { formatNumber } from '@flangewise/quantities';
import type { DrawingModel } from '../drawings/drawing-model.js';

/** The ports of one cover. */
export interface NozzleTable {
  readonly set: number;
  readonly heading: string;
  readonly rows: readonly {
    readonly name: string;
    readonly size: string;
    readonly place: string;
    readonly use: string;
  }[];
}

const useText = (slot: SlotPath | null, numbers: ReadonlyMap<SlotPath, number>): string => {
  const parsed = slot === null ? undefined : parseSlotPath(slot);
  if (slot === null || parsed === undefined) return 'free, plugged';
  const number = numbers.get(slot);
  return `${number === undefined ? '' : `${String(number)} `}${slots[parsed.slot].title}`;
};

/** The nozzle schedule: bore, place on the circle, what sits on it. */
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
          place: port.circle === 0 ? 'centre' : `${formatNumber(port.angle)}°`,
          use: useText(port.slot, numbers),
        })),
      },
    ];
  });
