import type { Assessment, System } from '@flangewise/model';
import type { OpenSystem } from './read-system.js';

/** Somebody's word that something may go out, as the system carries it. */
export interface Release {
  readonly kind: 'discount' | 'special';
  readonly what: string;
  readonly by: string;
}

export interface ReleasedAssessment {
  /** What the releases cover blocks no longer. */
  readonly assessment: Assessment;
  readonly releases: readonly Release[];
  /** Whether something lies outside the standard range that nobody has released. */
  readonly waits: boolean;
}

type Parts = ReadonlyMap<string, { readonly name: string; readonly by: string | undefined }>;

/** Sets that have specials, all of them released by somebody. */
const releasedSets = ({ sets }: System, parts: Parts): ReadonlySet<number> =>
  new Set(
    sets.flatMap(({ choices }, set) => {
      const specials = [choices.vessel, choices.cover, choices.shaft].flatMap((id) =>
        typeof id === 'string' ? (parts.get(id) ?? []) : [],
      );
      return specials.length > 0 && specials.every(({ by }) => by !== undefined) ? [set] : [];
    }),
  );

const releasesOf = ({ offer }: System, parts: Parts): readonly Release[] => [
  ...[...parts.values()].flatMap(({ name, by }) =>
    by === undefined ? [] : [{ kind: 'special' as const, what: name, by }],
  ),
  ...(offer?.discountReleasedBy === undefined
    ? []
    : [
        {
          kind: 'discount' as const,
          what: `Discount of ${offer.discountPercent ?? '0'} %`,
          by: offer.discountReleasedBy,
        },
      ]),
];

/**
 * The assessment of a system with the releases that its document carries. The specials of a set are released with
 * whatever else that set has outside the standard range; what all sets share, with the special of any.
 */
export const assessReleased = async (
  { system, bench }: Pick<OpenSystem, 'system' | 'bench'>,
  withEvidence: boolean,
): Promise<ReleasedAssessment> => {
  const { assess, specialsOf } = await import('@flangewise/constraints');
  const made = specialsOf(system, bench.range);
  const parts: Parts = new Map(
    (made.ok ? made.value : []).map(({ item, releasedBy }) => [item.id, { name: item.name, by: releasedBy }]),
  );
  const covered = releasedSets(system, parts);
  const assessment = assess(system, bench, { withEvidence });
  const outside = assessment.results.filter(
    ({ kind, status }) => kind === 'hard' && status === 'outside standard range',
  );
  const waits = outside.some(({ set }) => (set === undefined ? covered.size === 0 : !covered.has(set)));
  return {
    assessment:
      waits || outside.length === 0
        ? assessment
        : assess(system, bench, { withEvidence, specialsReleased: true }),
    releases: releasesOf(system, parts),
    waits,
  };
};

/** Who released what, for the reader: the command line takes the document's word. */
export const releaseNotes = ({ releases, waits }: ReleasedAssessment): readonly string[] => [
  ...releases.map(({ what, by }) => `${what}: released by ${by}, as the system says.`),
  ...(waits
    ? [
        'Something lies outside the standard range and is not released: its offer carries a watermark until an approver releases it in the application, or the system names who did (specials[0].releasedBy, specialParts[0].releasedBy).',
      ]
    : []),
];
