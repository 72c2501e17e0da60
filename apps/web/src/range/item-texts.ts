import {
  allowedText,
  cellOf,
  cellText,
  type Item,
  itemFieldsOf,
  type ItemField,
  itemOfLeaves,
  itemSchema,
  leavesOf,
  pathText,
  readCell,
  type SlotName,
  templateOf,
} from '@flangewise/model';

/** What stands in the fields of an item while it is edited, by path. */
export type ItemTexts = Readonly<Record<string, string>>;

export const textsOf = (item: Item): ItemTexts =>
  Object.fromEntries(
    [...leavesOf(item)]
      .filter(([path]) => path !== 'slot')
      .map(([path, { field, value }]) => [path, cellText(cellOf(field, value))]),
  );

export type ReadTexts =
  | { readonly ok: true; readonly item: Item }
  /** What is allowed, by the path of the field. */
  | { readonly ok: false; readonly troubles: Readonly<Record<string, string>> };

const fieldAt = (slot: SlotName, path: string): ItemField | undefined =>
  itemFieldsOf(slot).find((field) => field.path === templateOf(path));

/** The item that the fields say, or what is wrong with which of them. */
export const readTexts = (slot: SlotName, texts: ItemTexts): ReadTexts => {
  const values = new Map<string, unknown>();
  const troubles: Record<string, string> = {};
  for (const [path, text] of Object.entries(texts)) {
    const field = fieldAt(slot, path);
    if (field === undefined || text.trim() === '') continue;
    const read = readCell(field, text);
    if (read.ok) values.set(path, read.value);
    else troubles[path] = read.error;
  }
  if (Object.keys(troubles).length > 0) return { ok: false, troubles };
  const parsed = itemSchema.safeParse(itemOfLeaves(slot, values));
  if (parsed.success) return { ok: true, item: parsed.data };
  for (const issue of parsed.error.issues) {
    const path = pathText(issue.path);
    const field = fieldAt(slot, path);
    troubles[path] = field === undefined ? issue.message : `give ${allowedText(field)}`;
  }
  return { ok: false, troubles };
};

const listOf = (
  path: string,
): { readonly list: string; readonly index: number; readonly rest: string } | undefined => {
  const [, list, index, rest] = /^(.*?)\[(\d+)\](.*)$/.exec(path) ?? [];
  return list === undefined ? undefined : { list, index: Number(index), rest: rest ?? '' };
};

/** How many of several have something written. */
export const countIn = (texts: ItemTexts, list: string): number =>
  Object.keys(texts).reduce((most, path) => {
    const at = listOf(path);
    return at?.list === list ? Math.max(most, at.index + 1) : most;
  }, 0);

/** The fields without one of several; those after it move up. */
export const withoutOne = (
  texts: ItemTexts,
  { list, index }: { readonly list: string; readonly index: number },
) =>
  Object.fromEntries(
    Object.entries(texts).flatMap(([path, text]) => {
      const at = listOf(path);
      if (at?.list !== list || at.index < index) return [[path, text]];
      return at.index === index ? [] : [[`${list}[${String(at.index - 1)}]${at.rest}`, text]];
    }),
  );

/** A number that no item has yet: the next one after those that begin like others of the slot. */
export const freeNumber = (items: readonly Item[], slot: SlotName): string => {
  const ofSlot = items.filter((item) => item.slot === slot).map(({ id }) => id);
  const prefix = ofSlot[0]?.slice(0, 3) ?? `${slot.slice(0, 2).toUpperCase()}-`;
  const last = items.reduce(
    (most, { id }) => (id.startsWith(prefix) ? Math.max(most, Number(id.slice(3))) : most),
    1000,
  );
  return `${prefix}${String(last + 1)}`;
};
