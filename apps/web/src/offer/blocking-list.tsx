import type { Status } from '@flangewise/model';
import { StatusMark } from '../look/status-mark';

/** The state that a sentence ends in; what waits for somebody's word is outside the standard range. */
const statusOf = (sentence: string): Status =>
  sentence.includes(': not met')
    ? 'not met'
    : sentence.includes(': not decidable') || sentence.endsWith('not chosen yet')
      ? 'not decidable'
      : 'outside standard range';

/** What keeps an offer from being sent, each sentence once. */
export function BlockingList({ sentences }: { readonly sentences: readonly string[] }) {
  if (sentences.length === 0)
    return (
      <p className="mt-1">
        <StatusMark status="met" /> Nothing is left to do.
      </p>
    );
  return (
    <ul>
      {[...new Set(sentences)].map((text) => (
        <li key={text} className="row grid grid-cols-[22px_minmax(0,1fr)] py-1.5">
          <StatusMark status={statusOf(text)} /> {text}
        </li>
      ))}
    </ul>
  );
}
