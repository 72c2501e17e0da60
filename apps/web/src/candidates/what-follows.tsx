import { statusRank } from '@flangewise/model';
import type { Outputs } from '../api/client';
import { StatusMark } from '../look/status-mark';
import { FoldedList } from './folded-list';

type Answer = Outputs['systems']['solve'];

/** What the client has still to say. */
export function StillOpen({ points }: { readonly points: Answer['openPoints'] }) {
  return (
    <FoldedList
      title="Still open"
      id="still-open"
      atFirst={3}
      items={points.map(({ question, why }) => ({
        key: question,
        body: (
          <>
            <StatusMark status="not decidable" /> {question}
            <span className="say-sm block text-ink2 first-letter:uppercase">{why}</span>
          </>
        ),
      }))}
    />
  );
}

/** What follows from the inquiry alone, which materials stand the media, and what to beware of. */
export function WhatFollows({ answer }: { readonly answer: Answer }) {
  const said = (texts: readonly string[]) =>
    texts.map((text) => ({
      key: text,
      body: <span className="say-sm block first-letter:uppercase">{text}</span>,
    }));
  return (
    <>
      <FoldedList title="What follows from the inquiry" atFirst={4} items={said(answer.findings)} />
      <FoldedList
        title="Materials against the media"
        atFirst={4}
        items={answer.materials
          .toSorted((a, b) => statusRank[a.status] - statusRank[b.status])
          .map(({ material, status, text }) => ({
            key: material,
            body: (
              <>
                <StatusMark status={status} /> <b className="font-semibold">{material}</b>{' '}
                <span className="lab">{status}</span>
                <span className="say-sm block first-letter:uppercase">{text}</span>
              </>
            ),
          }))}
      />
      <FoldedList title="Take care" atFirst={3} items={said(answer.cautions)} />
    </>
  );
}
