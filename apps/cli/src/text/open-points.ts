import type { OpenPoint } from '@flangewise/model';
import { points, section } from './section.js';

/** Questions to the client, each with what hangs on it. */
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
