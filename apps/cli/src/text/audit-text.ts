import type { AuditAnswer } from '@flangewise/model';
import { page, points, section } from './section.js';
import { counted } from './status-text.js';
import { table } from './table.js';

/** The audit of a range in words. */
export const auditText = (answer: AuditAnswer, columns: number): string =>
  page(
    [
      `Catalogue ${answer.catalogueRevision}: ${counted(answer.items, 'item')}, ${counted(answer.rules, 'rule')}`,
    ],
    section(
      'Dead items',
      answer.deadItems.length === 0
        ? '  none'
        : table(
            [{ title: '' }, { title: '' }],
            answer.deadItems.map(({ item, reason }) => [item, reason]),
            columns,
          ),
    ),
    section(
      'Redundant rules',
      answer.redundantRules.length === 0 ? '  none' : points(answer.redundantRules, columns),
    ),
    section('Gaps', answer.gaps.length === 0 ? '  none' : points(answer.gaps, columns)),
    [`Rules ${answer.ruleRevision}`],
  );
