'use client';

import { useMe } from '../api/use-me';
import { fileFormats, formatNames } from './read-file';
import { type FrameContent, RevisionFrame } from './revision-frame';
import { TakeIn } from './take-in';
import { mayKeep } from './use-revision';

function Files({ revision }: FrameContent) {
  const me = useMe();
  return (
    <div className="grid gap-6 lg:grid-cols-[minmax(0,2fr)_minmax(0,1fr)]">
      <div className="min-w-0">
        {revision.state === 'draft' && mayKeep(me) ? (
          <TakeIn revision={revision} />
        ) : (
          <p className="say max-w-[60ch]">
            Files are taken into a draft, by whoever keeps the range. This revision can be saved as a file.
          </p>
        )}
      </div>
      <section className="sec min-w-0 self-start">
        <h2>Save as a file</h2>
        <ul>
          {formatNames.map((format) => (
            <li key={format} className="row py-1.5">
              <a
                className="py-1 font-medium text-given underline"
                href={`/api/catalogue/${revision.id}/export.${format}`}
                download
              >
                {fileFormats[format].title}
              </a>
              <span className="lab block">{fileFormats[format].says}</span>
            </li>
          ))}
        </ul>
        <p className="say-sm mt-2">What is saved here can be changed elsewhere and taken in again.</p>
      </section>
    </div>
  );
}

/** A revision as a file, and files into a draft. */
export function FilesPage({ id }: { readonly id: string }) {
  return (
    <RevisionFrame id={id} sheet="Files">
      {(content) => <Files {...content} />}
    </RevisionFrame>
  );
}
