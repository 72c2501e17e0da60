import { type RuleResult, type SlotPath, statusRank } from '@flangewise/model';
import { type CheckRow, checkRowsOf } from '@flangewise/documents/drawings';

/** One rule in one state: alike results on several parts are one row. */
export interface CheckGroup {
  readonly key: string;
  readonly result: RuleResult;
  /** How many results it tells. */
  readonly count: number;
  readonly row: CheckRow;
  /** Slots of all results of the group. */
  readonly slots: readonly string[];
  /** What each of them says. */
  readonly texts: readonly string[];
}

const keyOf = ({ rule, set, status }: RuleResult): string => `${rule}|${String(set ?? '')}|${status}`;

/** Results as rows, worst first, then the tightest. */
export const checkGroupsOf = (
  results: readonly RuleResult[],
  numbers: ReadonlyMap<SlotPath, number>,
): readonly CheckGroup[] => {
  const groups = new Map<string, RuleResult[]>();
  for (const result of results) groups.set(keyOf(result), [...(groups.get(keyOf(result)) ?? []), result]);
  return [...groups]
    .flatMap(([key, members]): CheckGroup[] => {
      const result = members.toSorted((a, b) => (b.utilisation ?? -1) - (a.utilisation ?? -1))[0];
      const row =
        result === undefined ? undefined : checkRowsOf([result], { numbers, setName: () => null })[0];
      if (result === undefined || row === undefined) return [];
      const slots = [...new Set(members.flatMap((member) => member.slots))];
      return [
        {
          key,
          result,
          count: members.length,
          row,
          slots,
          texts: [...new Set(members.map(({ text }) => text))],
        },
      ];
    })
    .toSorted(
      (a, b) =>
        statusRank[a.result.status] - statusRank[b.result.status] ||
        (b.result.utilisation ?? -1) - (a.result.utilisation ?? -1),
    );
};
