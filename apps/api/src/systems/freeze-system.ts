import { isDeepStrictEqual } from 'node:util';
import type { SystemInput } from '@flangewise/model';
import { Role } from '../auth/roles.js';
import { visibleSystems } from '../auth/visible.js';
import { lockRow } from '../database/lock-row.js';
import { storable } from '../database/storable.js';
import { refuse } from '../errors/refusal.js';
import type { Prisma } from '../generated/client.js';
import { takeUp } from '../inquiries/take-up.js';
import type { Desk } from '../trpc/context.js';
import { readSystem } from '../workshop/read-system.js';
import { checkChoices } from './check-choices.js';

type Step = Prisma.TransactionClient;

const lastRevision = (step: Step, systemId: string) =>
  step.systemRevision.findFirst({
    where: { systemId },
    orderBy: { number: 'desc' },
    include: { author: { select: { name: true } } },
  });

/**
 * The revision that holds a system as it is now, with its proof by the catalogue and the rules in force: the last one if
 * nothing moved since, else a new one. An engineer who freezes it takes its inquiry up.
 */
export async function freezeSystem(step: Step, { workshop, person }: Omit<Desk, 'database'>, id: string) {
  await lockRow(step, 'System', id);
  const system = await step.system.findFirst({ where: { id, ...visibleSystems(person) } });
  if (system === null) throw refuse('NOT_FOUND', { what: 'system', field: 'id', given: id });
  if (person.role === Role.applications_engineer) await takeUp(step, system.inquiryId, person);
  const document = system.document as unknown as SystemInput;
  checkChoices(readSystem(document), workshop);
  const assessment = workshop.assess(document, { withEvidence: true });
  const { catalogueRevision, ruleRevision } = assessment;
  const last = await lastRevision(step, id);
  if (
    last?.catalogueRevision === catalogueRevision &&
    last.ruleRevision === ruleRevision &&
    isDeepStrictEqual(last.document, system.document)
  )
    return last;
  return step.systemRevision.create({
    data: {
      systemId: id,
      number: (last?.number ?? 0) + 1,
      document: storable(document),
      assessment: storable(assessment),
      authorId: person.id,
      catalogueRevision,
      ruleRevision,
    },
    include: { author: { select: { name: true } } },
  });
}

/** Keeps a system as it is now, under a number, for good. */
export async function createSystemRevision({ database, workshop, person }: Desk, id: string) {
  const revision = await database.$transaction((step) => freezeSystem(step, { workshop, person }, id));
  const { number, author, createdAt, catalogueRevision, ruleRevision } = revision;
  return { number, author: author.name, createdAt: createdAt.toISOString(), catalogueRevision, ruleRevision };
}
