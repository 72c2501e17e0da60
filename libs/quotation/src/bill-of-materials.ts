import { itemById } from '@flangewise/catalogue';
import {
  type Catalogue,
  type Choices,
  fail,
  frameSlots,
  type Item,
  type Outcome,
  setSlots,
  type SlotName,
  type SlotPath,
  slotPath,
  slots,
  succeed,
  type System,
} from '@flangewise/model';
import type { QuotationTrouble } from './trouble.js';

/** A part that stands in no price list, with the price that the engineer's method gave. */
export interface SpecialPart {
  readonly item: Item;
  /** Whole, in the currency of the offer; absent where the list has no rates for its material. */
  readonly price?: number;
  /** How it differs from the range. */
  readonly deviations?: readonly string[];
  /** Who released it; absent while nobody has. */
  readonly releasedBy?: string;
}

/** One line of the bill: an item, where it is used, how many. */
export interface BillLine {
  readonly item: Item;
  readonly slots: readonly SlotPath[];
  readonly quantity: number;
  /** Present for a part that stands in no price list. */
  readonly special?: SpecialPart;
}

export interface BillQuestion {
  readonly system: Pick<System, 'frame' | 'sets'>;
  readonly catalogue: Pick<Catalogue, 'items'>;
  readonly specials?: readonly SpecialPart[];
}

/** The wetted material is a property of the vessel that is chosen with it: it is no part that can be delivered. */
const isPart = (slot: SlotName): boolean => slot !== 'material';

interface Use {
  readonly slot: SlotName;
  readonly path: SlotPath;
  readonly id: string;
  readonly quantity: number;
}

const usesOf = ({ frame, sets }: BillQuestion['system']): readonly Use[] => {
  const use = (choices: Choices, slot: SlotName, at: { set?: number; quantity: number }): readonly Use[] => {
    const id = choices[slot];
    return typeof id === 'string' ? [{ slot, path: slotPath(slot, at.set), id, quantity: at.quantity }] : [];
  };
  return [
    ...sets.flatMap(({ choices, count }, set) =>
      setSlots.filter(isPart).flatMap((slot) => use(choices, slot, { set, quantity: count })),
    ),
    ...frameSlots.filter(isPart).flatMap((slot) => use(frame, slot, { quantity: 1 })),
  ];
};

/**
 * What has to be delivered for a system: parts of a set as often as the set counts, parts of the frame once,
 * the same item in several places on one line.
 *
 * @error QUOTE_NOTHING_CHOSEN; QUOTE_UNKNOWN_ITEM for a number that is neither in the catalogue nor a special;
 *   QUOTE_WRONG_SLOT for an item that belongs elsewhere
 */
export const billOfMaterials = ({
  system,
  catalogue,
  specials = [],
}: BillQuestion): Outcome<readonly BillLine[], QuotationTrouble> => {
  const specialById = new Map(specials.map((special) => [special.item.id, special]));
  const lines = new Map<string, BillLine>();
  for (const { slot, path, id, quantity } of usesOf(system)) {
    const special = specialById.get(id);
    const item = special?.item ?? itemById(catalogue, id);
    if (item === undefined) {
      return fail({
        code: 'QUOTE_UNKNOWN_ITEM',
        message: `${path}: ${id} is not in the catalogue; choose an item of the slot ${slots[slot].title}, or give the special part with its price`,
        path,
      });
    }
    if (item.slot !== slot) {
      return fail({
        code: 'QUOTE_WRONG_SLOT',
        message: `${path}: ${id} (${item.name}) belongs to ${slots[item.slot].title}, not to ${slots[slot].title}`,
        path,
      });
    }
    const known = lines.get(id);
    lines.set(id, {
      item,
      slots: [...(known?.slots ?? []), path],
      quantity: (known?.quantity ?? 0) + quantity,
      ...(special === undefined ? {} : { special }),
    });
  }
  return lines.size === 0
    ? fail({
        code: 'QUOTE_NOTHING_CHOSEN',
        message: 'nothing is chosen yet: choose at least one item before asking for a price',
      })
    : succeed([...lines.values()]);
};
