import type { OpenPoint } from '@flangewise/model';
import { points, section } from './section.js';
import { counted } from './status-text.js';

/** For readers of an answer that does not carry the questions. */
export const openPointsNote = (open: readonly Pick<OpenPoint, 'field'>[]): readonly string[] =>
  open.length === 0
    ? []
    : [
        `The inquiry leaves ${counted(open.length, 'point')} open, which "solve" asks for: ${open.map(({ field }) => field).join(', ')}`,
      ];

/** Questions to the client, each with what depends on it. */
export const openPointsSection = (
  open: readonly Pick<OpenPoint, 'question' | 'why'>[],
  columns: number,
): readonly string[] =>
  section(
    'Open points',
    points(
      open.map(({ question, why }) => `${question}${/[.?]$/.test(question) ? '' : '.'} ${why}`),
      columns,
    ),
  );
