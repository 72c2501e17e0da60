import type { Change, ExplainAnswer, OpenPoint } from '@flangewise/model';
import { openPointsSection } from './open-points.js';
import { page, points, section } from './section.js';
import { moneyText } from './status-text.js';
import { hanging } from './wrap.js';

export interface ExplainTextInput {
  readonly title: string;
  readonly answer: ExplainAnswer;
  readonly openPoints: readonly OpenPoint[];
  readonly currency: string | undefined;
}

type Conflict = ExplainAnswer['conflicts'][number];

const resultSentence = ({ result }: ExplainAnswer): string => {
  switch (result) {
    case 'consistent':
      return 'Nothing is in conflict: a valid whole exists that keeps everything said and chosen.';
    case 'conflict':
      return 'Some of what was said and chosen cannot hold together.';
    case 'background inconsistent':
      return 'The range and its rules admit no system at all, whatever is said.';
    case 'not proved':
      return 'The search was stopped before anything was proved.';
  }
};

/** What the members of a conflict, which stand below it, do to one another. */
const between = ({ statements }: Conflict): string =>
  statements.length === 1
    ? 'This alone leaves nothing of the range:'
    : 'These exclude each other; without any one of them there is a way:';

const conflictText = (conflict: Conflict, columns: number): string =>
  [
    hanging('  ', between(conflict), columns),
    ...conflict.statements.map((s) => hanging('    - ', `${s.text} (${s.path})`, columns)),
    ...conflict.rules.map((r) =>
      hanging('    by ', r.text === `${r.title}.` ? r.text : `${r.title}: ${r.text}`, columns),
    ),
    ...(conflict.special === undefined ? [] : [hanging('    ', conflict.special, columns)]),
  ].join('\n');

const changeText = ({ text, priceDifference }: Change, currency: string | undefined): string =>
  priceDifference === undefined || currency === undefined
    ? text
    : `${text} (${priceDifference.startsWith('-') ? '' : '+'}${moneyText(priceDifference)} ${currency})`;

/** Conflicts and repairs in words. */
export const explainText = (
  { title, answer, openPoints, currency }: ExplainTextInput,
  columns: number,
): string =>
  page(
    [`${title}\n${hanging('', resultSentence(answer), columns)}`],
    ...answer.conflicts.map((conflict, k) =>
      section(
        answer.conflicts.length === 1 ? 'Conflict' : `Conflict ${String(k + 1)}`,
        conflictText(conflict, columns),
      ),
    ),
    section(
      'Smallest changes that mend it',
      points(
        answer.repairs.map((r) => changeText(r, currency)),
        columns,
      ),
    ),
    openPointsSection(openPoints, columns),
    [`Catalogue ${answer.catalogueRevision}, rules ${answer.ruleRevision}`],
  );
