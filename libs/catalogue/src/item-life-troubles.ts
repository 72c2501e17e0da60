import type { InputTrouble, Item } from '@flangewise/model';

const linkTroubles = (item: Item, path: string, byId: ReadonlyMap<string, Item>): readonly InputTrouble[] => {
  const links = [
    ...(item.successor === undefined ? [] : [{ field: 'successor', id: item.successor }]),
    ...(item.alternatives ?? []).map((id, index) => ({ field: `alternatives[${String(index)}]`, id })),
  ];
  return links.flatMap(({ field, id }) => {
    const linked = byId.get(id);
    const message =
      linked === undefined
        ? 'there is no item of this number'
        : linked.id === item.id
          ? 'an item does not follow or replace itself'
          : linked.slot !== item.slot
            ? `${linked.name} belongs to ${linked.slot}; an item of ${item.slot} is allowed`
            : linked.life === 'discontinued'
              ? `${linked.name} is discontinued itself; name one that is sold`
              : undefined;
    return message === undefined
      ? []
      : [{ path: `${path}.${field}`, given: JSON.stringify(id), message: `${message}; correct the number` }];
  });
};

const lifeTroubles = (
  { life, successor, validFrom, validUntil }: Item,
  path: string,
): readonly InputTrouble[] => [
  ...(life === 'to be discontinued' && successor === undefined
    ? [
        {
          path: `${path}.life`,
          given: JSON.stringify(life),
          message: 'an item that is to be discontinued names its successor; add its number',
        },
      ]
    : []),
  ...(validFrom !== undefined && validUntil !== undefined && validUntil < validFrom
    ? [
        {
          path: `${path}.validUntil`,
          given: JSON.stringify(validUntil),
          message: `ends before it begins (${validFrom})`,
        },
      ]
    : []),
];

/** Successors and alternatives that are none, and lives that end before they begin. */
export const itemLifeTroubles = (items: readonly Item[]): readonly InputTrouble[] => {
  const byId = new Map(items.map((item) => [item.id, item]));
  return items.flatMap((item, index) => {
    const path = `items[${String(index)}]`;
    return [...linkTroubles(item, path, byId), ...lifeTroubles(item, path)];
  });
};
