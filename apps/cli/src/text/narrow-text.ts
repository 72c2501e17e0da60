import type { Item, NarrowAnswer, OpenPoint } from '@flangewise/model';
import { openPointsSection } from './open-points.js';
import { page, section } from './section.js';
import { table } from './table.js';
import { hanging } from './wrap.js';

export interface NarrowTextInput {
  readonly title: string;
  readonly answer: NarrowAnswer;
  readonly openPoints: readonly OpenPoint[];
  readonly items: ReadonlyMap<string, Item>;
}

/** Numbers that a line lists. */
const mostListed = 6;

const chosenText = (chosen: string | null | undefined, items: NarrowTextInput['items']): string =>
  chosen === undefined
    ? 'not chosen'
    : chosen === null
      ? 'none'
      : `${chosen} ${items.get(chosen)?.name ?? ''}`;

const optionsText = (valid: readonly (string | null)[]): string => {
  const rest = valid.length - mostListed;
  const shown = valid.slice(0, mostListed).map((id) => id ?? 'none');
  return valid.length === 0 ? 'nothing' : `${shown.join(' ')}${rest > 0 ? ` and ${String(rest)} more` : ''}`;
};

/** What is still possible in every slot, in words. */
export const narrowText = (
  { title, answer, openPoints, items }: NarrowTextInput,
  columns: number,
): string => {
  const rows = Object.entries(answer.slots).map(([path, { chosen, valid, refused }]) => [
    path,
    `${String(valid.length)} of ${String(valid.length + refused.length)}`,
    chosenText(chosen, items),
    optionsText(valid),
  ]);
  const head = answer.consistent
    ? 'The choices lead to a valid whole.'
    : 'The choices lead to no valid whole: a slot lists what would mend it alone; "explain" names the conflict.';
  const exact = answer.exact ? '' : ' The search was stopped: more may be refused.';
  return page(
    [`${title}\n${hanging('', `${head}${exact}`, columns)}`],
    section(
      'Slots',
      table(
        [{ title: 'Slot' }, { title: 'Possible', align: 'right' }, { title: 'Chosen' }, { title: 'May be' }],
        rows,
        columns,
      ),
    ),
    openPointsSection(openPoints, columns),
    [`Catalogue ${answer.catalogueRevision}, rules ${answer.ruleRevision}`],
  );
};
