import type { Catalogue } from '@flangewise/model';
import { useQuery } from '@tanstack/react-query';
import { api, type Outputs } from '../api/client';
import type { Me } from '../api/use-me';

export type RevisionHead = Outputs['catalogue']['listRevisions']['revisions'][number];
export type Revision = RevisionHead & { readonly catalogue: Catalogue };
export type Comparison = Outputs['catalogue']['compare'];

/** Begins every key of what the desk shows, so that one word renews all of it. */
export const deskKey = 'desk';
export const revisionsKey = [deskKey, 'revisions'] as const;
export const revisionKey = (id: string) => [deskKey, 'revision', id] as const;

/** Who keeps the range: opens drafts, changes them and puts them in force. */
export const mayKeep = (me: Me | undefined): boolean => me?.role === 'catalogue_keeper';
/** Who may look at every revision with its prices: everybody of the maker. */
export const mayRead = (me: Me | undefined): boolean => me !== undefined && me.role !== 'customer';

/** Every revision of the range, the newest first. */
export const useRevisions = (enabled = true) =>
  useQuery({
    queryKey: revisionsKey,
    queryFn: async () => (await api.catalogue.listRevisions.query()).revisions,
    enabled,
  });

/** One revision with everything that it holds. */
export const useRevision = (id: string) =>
  useQuery({
    queryKey: revisionKey(id),
    queryFn: async () => (await api.catalogue.getRevision.query({ id })).revision as Revision,
    staleTime: 60_000,
    structuralSharing: false,
  });

/** The revision that another one began as a copy of; undefined for the first, and until all are known. */
export const beforeOf = (
  revision: RevisionHead,
  all: readonly RevisionHead[] | undefined,
): RevisionHead | undefined =>
  all?.find(({ name, state }) => name === revision.basedOn && state === 'released');

export interface Compared {
  readonly from: string | undefined;
  readonly to: string;
  /** Of the second, so that a draft is compared again when it changes. */
  readonly version: number | undefined;
}

/** What one revision has otherwise than another. */
export const useComparison = ({ from, to, version }: Compared) =>
  useQuery({
    queryKey: [deskKey, 'compare', from, to, version],
    queryFn: () => api.catalogue.compare.query({ from: from ?? '', to }),
    enabled: from !== undefined && version !== undefined,
    staleTime: 60_000,
    structuralSharing: false,
  });
