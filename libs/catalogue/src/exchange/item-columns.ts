import { type Item, type ItemField, type ItemShape, itemShapeOf, type SlotName } from '@flangewise/model';

/** A column of a table of items: one field, or one of several. */
export interface ItemColumn {
  readonly path: string;
  readonly head: string;
  readonly field: ItemField;
}

/** "ports # free diameter" of the third → "ports 3 free diameter". */
const numbered = (label: string, path: string): string => {
  const places = [...path.matchAll(/\[(\d+)\]/g)].map(([, index]) => Number(index) + 1);
  return label.replaceAll('#', () => String(places.shift() ?? 1));
};

/** Head of the column of a field: what it is in words, and the unit of its numbers. */
export const headOf = (field: ItemField, path: string): string =>
  numbered(field.label, path) + (field.unit === undefined ? '' : ` [${field.unit.label}]`);

type Json = Readonly<Record<string, unknown>>;

const memberOf = (value: unknown, key: string): unknown =>
  typeof value === 'object' && value !== null ? (value as Json)[key] : undefined;

function columnsIn(shape: ItemShape, path: string, values: readonly unknown[]): readonly ItemColumn[] {
  switch (shape.is) {
    case 'field':
      return [{ path, head: headOf(shape.field, path), field: shape.field }];
    case 'group':
      return shape.parts.flatMap(([key, part]) =>
        columnsIn(
          part,
          path === '' ? key : `${path}.${key}`,
          values.map((value) => memberOf(value, key)),
        ),
      );
    case 'several': {
      const lists = values.map((value) => (Array.isArray(value) ? (value as readonly unknown[]) : []));
      const most = lists.reduce((max, list) => Math.max(max, list.length), 1);
      return Array.from({ length: most }, (_, i) =>
        columnsIn(
          shape.each,
          `${path}[${String(i)}]`,
          lists.map((list) => list[i]),
        ),
      ).flat();
    }
  }
}

/** The columns that items of a slot need, in the order of the schema: as many of several as the longest list has. */
export const columnsOf = (slot: SlotName, items: readonly Item[]): readonly ItemColumn[] =>
  columnsIn(itemShapeOf(slot), '', items).filter(({ path }) => path !== 'slot');

/** Head of the column that tells items apart. */
export const numberHead = 'number';
/** Head of the column that says where an item may stand, in tables of all slots. */
export const slotHead = 'slot';
