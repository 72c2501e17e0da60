'use client';

import { useQuery } from '@tanstack/react-query';
import { api, type Outputs } from '../api/client';
import { momentText } from '../figures/moment';
import { deskKey, type RevisionHead } from './use-revision';

type Change = Outputs['catalogue']['listChanges']['changes'][number];

/** Changes that are shown before the rest is asked for. */
const shownFirst = 12;

const deeds: Readonly<Record<Change['action'], (subject: string) => string>> = {
  opened: () => 'opened the draft',
  item_saved: (item) => `saved ${item}`,
  item_removed: (item) => `took ${item} out`,
  price_list_saved: (list) => `saved price list ${list}`,
  tables_saved: () => 'saved the house rules',
  imported: (format) => `took in a ${format.toUpperCase()} file`,
  released: () => 'put it in force',
  discarded: () => 'discarded it',
};

function Lines({ changes }: { readonly changes: readonly Change[] }) {
  const now = new Date();
  return (
    <ul>
      {changes.map(({ version, action, subject, author, at }) => (
        <li key={version} className="row flex justify-between gap-4 py-1.5">
          <span>
            {author} {deeds[action](subject ?? '')}
          </span>
          <span className="lab self-center">{momentText(new Date(at), now)}</span>
        </li>
      ))}
    </ul>
  );
}

/** Who did what to a revision while it was a draft, the last first. */
export function DraftHistory({ revision }: { readonly revision: RevisionHead }) {
  const { data } = useQuery({
    queryKey: [deskKey, 'history', revision.id, revision.version],
    queryFn: async () => (await api.catalogue.listChanges.query({ id: revision.id })).changes,
  });
  if (data === undefined || data.length === 0) return null;
  const rest = data.slice(shownFirst);
  return (
    <section className="sec">
      <h2>Who did what</h2>
      <Lines changes={data.slice(0, shownFirst)} />
      {rest.length > 0 && (
        <details>
          <summary className="btn-link">{rest.length} more</summary>
          <Lines changes={rest} />
        </details>
      )}
    </section>
  );
}
