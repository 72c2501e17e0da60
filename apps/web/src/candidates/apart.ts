import type { SlotName, SystemInput } from '@flangewise/model';

/** Slots whose kinds of part tell systems apart, the most telling first; vessel and closure stand in the title. */
const telling: readonly SlotName[] = [
  'heater',
  'circulator',
  'coil',
  'stirrer',
  'coupling',
  'drive',
  'lift',
  'gasSupply',
];

/** Slots in which systems that are alike in all this can still differ. */
const tellingInFull: readonly SlotName[] = [...telling, 'closure', 'seal', 'cover', 'relief'];

const most = 3;

export interface Titled {
  readonly title: string;
  readonly system: SystemInput;
}

type NameOf = (id: string) => string;

const partsAt = ({ system }: Titled, slot: SlotName, nameOf: NameOf): string =>
  [
    ...(system.sets ?? []).map(({ choices }) => (choices as Record<string, unknown>)[slot]),
    (system.frame as Record<string, unknown> | undefined)?.[slot],
  ]
    .filter((id): id is string => typeof id === 'string')
    .map(nameOf)
    .filter((name, at, all) => all.indexOf(name) === at)
    .join(' and ');

/** Of each the parts that not all of them have, in the order of what they tell. */
const differing = (
  several: readonly Titled[],
  slots: readonly SlotName[],
  nameOf: NameOf,
): readonly (readonly string[])[] => {
  const columns = slots
    .map((slot) => several.map((one) => partsAt(one, slot, nameOf)))
    .filter((column) => new Set(column).size > 1);
  return several.map((_, at) => columns.flatMap((column) => column[at] ?? []).filter((part) => part !== ''));
};

/** "Electric mantle, bore 130, 2000 W" is an electric mantle. */
const kindOf = (name: string): string => name.split(', ')[0] ?? name;

/** For each system the kinds of part that not all have; those still alike then tell their differing parts in full. */
export const partsApart = (several: readonly Titled[], nameOf: NameOf): readonly string[] => {
  const kinds = differing(several, telling, (id) => kindOf(nameOf(id))).map((parts) => parts.slice(0, most));
  const key = (at: number): string => `${several[at]?.title ?? ''} ${kinds[at]?.join() ?? ''}`;
  return several.map((one, at) => {
    const alike = several.filter((_, other) => key(other) === key(at));
    const inFull = differing(alike, tellingInFull, nameOf)[alike.indexOf(one)] ?? [];
    return [...(kinds[at] ?? []), ...inFull].slice(0, most).join('; ');
  });
};
