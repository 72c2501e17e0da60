import type { Item } from '@flangewise/model';

/** How an item is called and when it comes: no rule asks for it. */
const notAsked: ReadonlySet<string> = new Set<keyof Item>(['id', 'name', 'leadTimeDays']);

/** Items that are the same to every rule, in groups; what a rule leaves of one it leaves of all. */
export const alikeItems = (items: Iterable<Item>): readonly (readonly [Item, ...Item[]])[] => {
  const groups = new Map<string, [Item, ...Item[]]>();
  for (const item of items) {
    const key = JSON.stringify(item, (name, value: unknown) => (notAsked.has(name) ? undefined : value));
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [item]);
    else group.push(item);
  }
  return [...groups.values()];
};
