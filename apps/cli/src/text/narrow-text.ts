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
  return `${shown.join(' ')}${rest > 0 ? ` and ${String(rest)} more` : ''}`;
};

type Slot = NarrowAnswer['slots'][string];

const headOf = ({ consistent, exact }: NarrowAnswer, isOpen: boolean, mended: boolean): string => {
  const stopped = exact ? '' : ' The search was stopped: more may be refused.';
  if (consistent) return `${isOpen ? 'What was said leads' : 'The choices lead'} to a valid whole.${stopped}`;
  if (isOpen) return `Nothing of the range fits what was said: "explain" names the conflict.${stopped}`;
  return `The choices lead to no valid whole; ${mended ? 'one of these slots, changed alone, mends it' : 'no slot, changed alone, mends it'}: "explain" names the conflict.${stopped}`;
};

/** What is still possible in every slot, in words; where nothing is, the slots that would mend it. */
export const narrowText = (
  { title, answer, openPoints, items }: NarrowTextInput,
  columns: number,
): string => {
  const slots = Object.entries(answer.slots);
  const isOpen = slots.every(([, { chosen }]) => chosen === undefined);
  const shown = answer.consistent ? slots : slots.filter(([, { valid }]) => valid.length > 0);
  const row = ([path, { chosen, valid, refused }]: readonly [string, Slot]): readonly string[] => [
    path,
    `${String(valid.length)} of ${String(valid.length + refused.length)}`,
    ...(isOpen ? [] : [chosenText(chosen, items)]),
    optionsText(valid),
  ];
  return page(
    [`${title}\n${hanging('', headOf(answer, isOpen, shown.length > 0), columns)}`],
    section(
      'Slots',
      shown.length === 0
        ? ''
        : table(
            [
              { title: 'Slot' },
              { title: 'Possible', align: 'right' },
              ...(isOpen ? [] : [{ title: 'Chosen' }]),
              { title: 'May be' },
            ],
            shown.map(row),
            columns,
          ),
    ),
    openPointsSection(openPoints, columns),
    [`Catalogue ${answer.catalogueRevision}, rules ${answer.ruleRevision}`],
  );
};
