import { parseSlotPath, type RuleResult, setName, slots, type Status, type System } from '@flangewise/model';

/** Names and states of results that keep a system from being released, in the order in which they weigh. */
const said: readonly (readonly [Status, string])[] = [
  ['not met', 'not met'],
  ['not decidable', 'not decidable'],
  ['outside standard range', 'a special, to be released'],
];

const unique = (texts: readonly string[]): string => [...new Set(texts)].join(', ');

/** What several results of one rule are about: their sets, or within one set their parts. */
const whereOf = (results: readonly RuleResult[], system: System): string => {
  if (results.length < 2) return '';
  const sets = new Set(results.map(({ set }) => set));
  if (sets.size > 1) {
    return unique(
      results.map(({ set }) =>
        set === undefined ? 'what all share' : setName(system.sets[set]?.label, set),
      ),
    );
  }
  const paths = results.flatMap((result) => result.slots).map(parseSlotPath);
  return unique(paths.flatMap((path) => (path === undefined ? [] : [slots[path.slot].title])));
};

/** What keeps a system from being released, one sentence for a rule however many parts it meets. */
export const blockingOf = (
  results: readonly RuleResult[],
  system: System,
  undecided: readonly string[],
): string[] => {
  const hard = results.filter(({ kind }) => kind === 'hard');
  const sentences = said.flatMap(([status, words]) => {
    const stopping = hard.filter((result) => result.status === status);
    return [...new Set(stopping.map(({ title }) => title))].map((title) => {
      const where = whereOf(
        stopping.filter((result) => result.title === title),
        system,
      );
      return `${title}: ${words}${where === '' ? '' : ` (${where})`}`;
    });
  });
  return [
    ...sentences,
    ...(undecided.length === 0
      ? []
      : [
          undecided.length === 1
            ? '1 slot not chosen yet'
            : `${String(undecided.length)} slots not chosen yet`,
        ]),
  ];
};
