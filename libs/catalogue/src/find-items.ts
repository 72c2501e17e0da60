import type { Catalogue, Item, ItemOf, SlotName } from '@flangewise/model';

type Items = Pick<Catalogue, 'items'>;

interface Index {
  readonly byId: ReadonlyMap<string, Item>;
  readonly bySlot: ReadonlyMap<SlotName, readonly Item[]>;
}

const indexes = new WeakMap<readonly Item[], Index>();

const indexOf = ({ items }: Items): Index => {
  const known = indexes.get(items);
  if (known !== undefined) return known;
  const bySlot = new Map<SlotName, Item[]>();
  for (const item of items) {
    const ofSlot = bySlot.get(item.slot);
    if (ofSlot === undefined) bySlot.set(item.slot, [item]);
    else ofSlot.push(item);
  }
  const index = { byId: new Map(items.map((i) => [i.id, i])), bySlot };
  indexes.set(items, index);
  return index;
};

/** The item of a number; undefined where the catalogue has none. */
export const itemById = (catalogue: Items, id: string): Item | undefined => indexOf(catalogue).byId.get(id);

/** The items that may stand in a slot, in the order of the range. */
export const itemsOfSlot = <S extends SlotName>(catalogue: Items, slot: S): readonly ItemOf<S>[] =>
  (indexOf(catalogue).bySlot.get(slot) ?? []) as readonly ItemOf<S>[];
