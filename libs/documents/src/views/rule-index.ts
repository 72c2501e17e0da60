import { type RulePage, type SlotName, slotNames, slots } from '@flangewise/model';

/** One key of an index with the rules that stand under it, by their numbers in the book from 1. */
export interface IndexEntry {
  readonly title: string;
  readonly note?: string;
  readonly rules: readonly number[];
}

export interface RuleIndex {
  readonly title: string;
  readonly entries: readonly IndexEntry[];
}

const byTitle = (a: IndexEntry, b: IndexEntry): number =>
  a.title.localeCompare(b.title, 'en', { numeric: true });

/** Rules by everything that `keysOf` names, in the order in which keys first appear. */
const gathered = (
  pages: readonly RulePage[],
  keysOf: (page: RulePage) => readonly { readonly title: string; readonly note?: string }[],
): readonly IndexEntry[] => {
  const found = new Map<string, { title: string; note?: string; rules: number[] }>();
  for (const [i, page] of pages.entries())
    for (const key of keysOf(page)) {
      const name = `${key.title} ${key.note ?? ''}`;
      const entry = found.get(name) ?? { ...key, rules: [] };
      if (!entry.rules.includes(i + 1)) entry.rules.push(i + 1);
      found.set(name, entry);
    }
  return [...found.values()];
};

/** Published ones first. */
const bases = ['published', 'common practice', 'from memory, unverified'];
const byBasis = (a: IndexEntry, b: IndexEntry): number =>
  bases.indexOf(a.note ?? '') - bases.indexOf(b.note ?? '') || byTitle(a, b);

const rankOf = new Map(slotNames.map((slot, i) => [slots[slot].title, i]));

const slotTitle = (slot: SlotName): string => slots[slot].title;

/** The ways into the book: by group, by slot, by source, by medium. */
export const ruleIndexesOf = (pages: readonly RulePage[]): readonly RuleIndex[] => [
  { title: 'By group', entries: gathered(pages, ({ group }) => [{ title: group }]) },
  {
    title: 'By slot',
    entries: [...gathered(pages, ({ parts }) => parts.map(({ slot }) => ({ title: slotTitle(slot) })))].sort(
      (a, b) => (rankOf.get(a.title) ?? 0) - (rankOf.get(b.title) ?? 0),
    ),
  },
  {
    title: 'By source',
    entries: [
      ...gathered(pages, ({ sources }) => sources.map(({ short, basis }) => ({ title: short, note: basis }))),
    ].sort(byBasis),
  },
  {
    title: 'By medium',
    entries: [...gathered(pages, ({ media }) => media.map((title) => ({ title })))].sort(byTitle),
  },
];
