import { formatQuantity } from '@flangewise/quantities';
import Link from 'next/link';
import { statusClass } from '../look/status-mark';
import { ConditionRail } from './condition-rail';
import type { Conditions, RailCondition } from './conditions-of-inquiry';

const limitText = ({ limit, kind, highest, usual }: RailCondition): string => {
  if (highest === undefined && usual === undefined) return 'open';
  if (limit === undefined) return 'no limit known yet';
  return `${limit.by}: ${formatQuantity(limit.si, kind, { rounding: 'down' })}`;
};

const cell =
  'min-w-[150px] border-hair py-2 pr-3 lg:border-l lg:pl-3.5 lg:first:border-0 lg:first:pl-0 lg:max-xl:nth-[4n+1]:border-0 lg:max-xl:nth-[4n+1]:pl-0 sm:min-w-0';

function Condition({ condition }: { readonly condition: RailCondition }) {
  const { limit } = condition;
  const calm = limit === undefined || limit.status === 'met';
  return (
    <div className={cell}>
      <dt className="lab truncate">{condition.title}</dt>
      <dd>
        <span className="block truncate leading-5">
          <b className="given text-[14px]">{condition.value}</b>{' '}
          {condition.note !== undefined && <span className="lab ml-0.5">{condition.note}</span>}
        </span>
        <ConditionRail condition={condition} />
        <span
          className={`lab -mt-px block truncate ${calm || limit === undefined ? '' : statusClass(limit.status)}`}
        >
          {limitText(condition)}
        </span>
      </dd>
    </div>
  );
}

export interface ConditionStripProps {
  readonly conditions: Conditions;
  /** Where the conditions are changed. */
  readonly href: string;
}

/** What the process needs, in blue because it was given, with the first limit that each condition meets. */
export function ConditionStrip({ conditions, href }: ConditionStripProps) {
  const { rails, place } = conditions;
  return (
    <section
      aria-label="Process conditions"
      className="border-b border-rule bg-sheet px-4 lg:px-6 print:hidden"
    >
      <dl className="flex gap-x-4 overflow-x-auto sm:grid sm:grid-cols-4 sm:overflow-visible xl:grid-cols-7">
        {rails.map((condition) => (
          <Condition key={condition.key} condition={condition} />
        ))}
        <div className={cell}>
          <dt className="lab">Place and use</dt>
          <dd>
            <Link href={href} className="given block truncate text-[14px] leading-5 no-underline">
              {place.value}
            </Link>
            {place.notes.map((note) => (
              <span key={note} className="lab block truncate">
                {note}
              </span>
            ))}
          </dd>
        </div>
      </dl>
    </section>
  );
}
