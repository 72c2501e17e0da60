import Link from 'next/link';
import type { InquiryRecord } from '../api/use-inquiry';
import { momentText } from '../figures/moment';

/** Systems that were saved for an inquiry, each with who saved it last. */
export function SavedSystems({ systems }: { readonly systems: InquiryRecord['systems'] }) {
  if (systems.length === 0) return null;
  const now = new Date();
  return (
    <section className="sec" aria-labelledby="saved-systems">
      <h2 id="saved-systems">{systems.length === 1 ? 'One system is saved' : 'Systems that are saved'}</h2>
      <ul>
        {systems.map(({ id, name, title, author, updatedAt }) => (
          <li key={id} className="row grid grid-cols-[1.75rem_minmax(0,1fr)] py-2">
            <b className="font-semibold">{name}</b>
            <span>
              <Link href={`/systems/${id}`}>{title}</Link>
              <span className="lab block">
                {author}, {momentText(new Date(updatedAt), now)}
              </span>
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
