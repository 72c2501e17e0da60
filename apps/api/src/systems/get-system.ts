import type { SystemInput } from '@flangewise/model';
import { visibleSystems } from '../auth/visible.js';
import { refuse } from '../errors/refusal.js';
import type { Desk } from '../trpc/context.js';
import { readSystem } from '../workshop/read-system.js';
import { choiceProblems } from './check-choices.js';
import { systemFor } from './system-for.js';

/** One system, assessed by the rules and the catalogue in force. */
export async function getSystem({ database, workshop, person }: Desk, id: string) {
  const row = await database.system.findFirst({
    where: { id, ...visibleSystems(person) },
    include: {
      revisions: {
        orderBy: { number: 'desc' },
        select: {
          number: true,
          createdAt: true,
          catalogueRevision: true,
          ruleRevision: true,
          author: { select: { name: true } },
        },
      },
    },
  });
  if (row === null) throw refuse('NOT_FOUND', { what: 'system', field: 'id', given: id });
  const stored = row.document as unknown as SystemInput;
  return {
    id: row.id,
    inquiryId: row.inquiryId,
    name: row.letter,
    title: row.label,
    document: systemFor(stored, person),
    version: row.version,
    updatedAt: row.updatedAt.toISOString(),
    revisions: row.revisions.map(({ author, createdAt, ...revision }) => ({
      ...revision,
      author: author.name,
      createdAt: createdAt.toISOString(),
    })),
    assessment: workshop.assess(stored),
    /** Choices that the catalogue in force no longer serves. */
    unknownItems: choiceProblems(readSystem(stored), workshop),
  };
}
