import type { Evidence, SourceReference, Step } from '@flangewise/model';
import { stepValueText } from '@flangewise/documents/drawings';
import { formulaPieces } from './formula-pieces';

const basisWords: Readonly<Record<SourceReference['basis'], string>> = {
  published: '',
  'common practice': ', common practice',
  'from memory, unverified': ', from memory, unverified',
};

export function Sources({ sources }: { readonly sources: readonly SourceReference[] }) {
  return (
    <p className="lab mt-1">
      Rests on{' '}
      {sources.map(({ citation, basis }, i) => (
        <span key={`${citation} ${basis}`} className={basis === 'from memory, unverified' ? 's-caution' : ''}>
          {i > 0 && '; '}
          {citation}
          {basisWords[basis]}
        </span>
      ))}
      .
    </p>
  );
}

/** A formula with its indices and powers set. */
export function Formula({ text }: { readonly text: string }) {
  return formulaPieces(text).map((piece, i) => {
    const key = `${String(i)} ${piece.text}`;
    switch (piece.at) {
      case 'line':
        return <span key={key}>{piece.text}</span>;
      case 'low':
        return <sub key={key}>{piece.text}</sub>;
      case 'high':
        return <sup key={key}>{piece.text}</sup>;
    }
  });
}

function StepRow({ step, index }: { readonly step: Step; readonly index: number }) {
  return (
    <tr>
      <td className="w-6 text-ink2">{index + 1}</td>
      <td>
        <i className="font-serif text-[1.04em]">
          <Formula text={step.symbol} />
        </i>{' '}
        ={' '}
        <span className="font-serif">
          <Formula text={step.formula} />
        </span>
        <span className="lab block break-words">{step.substituted}</span>
        {step.note !== undefined && <span className="lab block italic">{step.note}</span>}
      </td>
      <td className="num font-medium">{stepValueText(step.value, step.unit)}</td>
    </tr>
  );
}

/** The steps of a calculation, so that a reader can redo it by hand. */
export function EvidenceView({ evidence }: { readonly evidence: Evidence }) {
  return (
    <section className="sec mt-5">
      <h3>{evidence.title}</h3>
      <table className="tab mt-1">
        <thead className="sr-only">
          <tr>
            <th>Step</th>
            <th>Formula and numbers</th>
            <th>Result</th>
          </tr>
        </thead>
        <tbody>
          {evidence.steps.map((step, i) => (
            <StepRow key={`${step.symbol} ${String(i)}`} step={step} index={i} />
          ))}
        </tbody>
      </table>
      <p className="lab mt-2">Valid: {evidence.range}.</p>
      <Sources sources={evidence.source} />
    </section>
  );
}
