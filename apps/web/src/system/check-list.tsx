'use client';

import type { Assessment, RuleResult, SlotPath } from '@flangewise/model';
import { checkCountText } from '@flangewise/documents/drawings';
import { formatNumber, thinSpace } from '@flangewise/quantities';
import { useState } from 'react';
import { type CheckGroup, checkGroupsOf } from './check-groups';
import { CheckRowView } from './check-row-view';

/** Met checks that are shown before the rest is folded away. */
const shownMet = 4;

export interface CheckListProps {
  readonly assessment: Assessment;
  readonly numbers: ReadonlyMap<SlotPath, number>;
  readonly setNames: readonly string[];
  readonly onOpen: (group: CheckGroup) => void;
}

/** A caution that compares nothing: it is told among the cautions. */
const isMereCaution = ({ kind, demand, limit }: RuleResult): boolean =>
  kind !== 'hard' && demand === undefined && limit === undefined;

const moreText = (folded: readonly CheckGroup[]): string => {
  const closest = Math.max(...folded.map(({ result }) => result.utilisation ?? 0));
  const share = closest > 0 ? `, the closest at ${formatNumber(closest * 100, 2, 'up')}${thinSpace}%` : '';
  const count = folded.reduce((sum, group) => sum + group.count, 0);
  return `${String(count)} more met${share}`;
};

/** Every check, what keeps the system from its release first; what is met and far from its limit is folded away. */
export function CheckList({ assessment, numbers, setNames, onOpen }: CheckListProps) {
  const [all, setAll] = useState(false);
  const groups = checkGroupsOf(
    assessment.results.filter((result) => !isMereCaution(result)),
    numbers,
  );
  const needCare = groups.filter(({ result }) => result.status !== 'met').length;
  const shown = all ? groups : groups.slice(0, needCare + shownMet);
  const folded = groups.slice(shown.length);
  return (
    <section className="sec">
      <div className="sec-head">
        <h2>Checks, not met and open first</h2>
        <span className="lab">{checkCountText(assessment.results)}</span>
      </div>
      <div>
        {shown.map((group) => (
          <CheckRowView
            key={group.key}
            group={group}
            numbers={numbers}
            setName={setNames.length > 1 ? setNames[group.result.set ?? 0] : undefined}
            onOpen={() => onOpen(group)}
          />
        ))}
      </div>
      {folded.length > 0 && (
        <button type="button" className="btn-link row w-full pl-[22px]" onClick={() => setAll(true)}>
          {moreText(folded)}
        </button>
      )}
      {all && (
        <button type="button" className="btn-link row w-full pl-[22px]" onClick={() => setAll(false)}>
          Show fewer
        </button>
      )}
    </section>
  );
}
