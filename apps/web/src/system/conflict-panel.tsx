'use client';

import { StatusMark } from '../look/status-mark';
import { withChange } from './edit-system';
import { Repairs } from './repairs';
import { useAnswer } from './use-view';
import type { Workbench } from './workbench';

/** What keeps the choices from being a whole, and the smallest changes that mend it. Nothing is undone by itself. */
export function ConflictPanel({ bench }: { readonly bench: Workbench }) {
  const { client, document, change } = bench;
  const answer = useAnswer(`explain ${JSON.stringify(document)}`, (signal) =>
    client.ask('explain', { document }, signal),
  );
  return (
    <section className="mb-5 border-l-[3px] border-fail bg-fail-t px-3 py-2.5" role="status">
      <h2>
        <StatusMark status="not met" /> These choices exclude each other
      </h2>
      {answer === undefined && <p className="lab">Looking for the smallest conflict …</p>}
      {answer?.ok === true && (
        <>
          {answer.value.conflicts.map((conflict) => (
            <div key={conflict.text} className="mt-1">
              <p className="say">
                {conflict.text} {conflict.special}
              </p>
              {conflict.rules.slice(0, 3).map(({ id, text }) => (
                <p key={id} className="say-sm text-ink2">
                  {text}
                </p>
              ))}
            </div>
          ))}
          {answer.value.repairs.length > 0 && (
            <Repairs
              bench={bench}
              base={document}
              answer={answer.value}
              onTake={(repair) => change(withChange(document, repair, answer.value))}
            />
          )}
        </>
      )}
    </section>
  );
}
