import type { Assessment, Status } from '@flangewise/model';
import { marginText } from '../figures/margin';
import { StatusMark } from '../look/status-mark';

const words: Readonly<Record<Status, string>> = {
  met: 'Holds',
  'met with caution': 'Holds, with care',
  'not met': 'Does not hold',
  'outside standard range': 'Needs a special',
  'not decidable': 'Not decidable yet',
};

/** The whole in one line, for screens on which the checks stand far below. */
export function Verdict({ assessment }: { readonly assessment: Assessment }) {
  const { status, leastMargin, results } = assessment;
  const worst = results.find((result) => result.status === status && result.kind === 'hard');
  return (
    <div className="px-4 pb-3">
      <p className="flex items-center gap-2 text-heading font-semibold">
        <StatusMark status={status} /> {words[status]}
      </p>
      {status !== 'met' && worst !== undefined && <p className="say first-letter:uppercase">{worst.text}</p>}
      {leastMargin !== null && (
        <p className="lab">
          Least margin {marginText(leastMargin.value)}: {leastMargin.title}
        </p>
      )}
    </div>
  );
}
