import type { Outputs } from '../api/client';
import { StatusMark } from '../look/status-mark';

type Answer = Outputs['systems']['solve'];

/** What follows from the inquiry alone, what the client has still to say, and what to beware of. */
export function WhatFollows({ answer }: { readonly answer: Answer }) {
  return (
    <>
      {answer.findings.length > 0 && (
        <section className="sec">
          <h2 className="font-semibold">What follows from the inquiry</h2>
          <ul>
            {answer.findings.map((text) => (
              <li key={text} className="row say-sm py-1.5">
                {text}
              </li>
            ))}
          </ul>
        </section>
      )}
      {answer.openPoints.length > 0 && (
        <section className="sec">
          <h2 className="font-semibold">Still open</h2>
          <ul>
            {answer.openPoints.map(({ question, why }) => (
              <li key={question} className="row py-1.5">
                <StatusMark status="not decidable" /> {question}{' '}
                <span className="say-sm block text-ink2">{why}</span>
              </li>
            ))}
          </ul>
        </section>
      )}
      {answer.materials.length > 0 && (
        <section className="sec">
          <h2 className="font-semibold">Materials against the media</h2>
          <ul>
            {answer.materials.map(({ material, status, text }) => (
              <li key={material} className="row py-1.5">
                <StatusMark status={status} /> <span className="font-medium">{material}</span>{' '}
                <span className="lab">{status}</span>
                <span className="say-sm block">{text}</span>
              </li>
            ))}
          </ul>
        </section>
      )}
      <section className="sec">
        <h2 className="font-semibold">Cautions</h2>
        <ul>
          {answer.cautions.map((text) => (
            <li key={text} className="row say-sm py-1.5">
              {text}
            </li>
          ))}
        </ul>
      </section>
    </>
  );
}
