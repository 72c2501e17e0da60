import { parseSlotPath, slots, type SlotPath } from '@flangewise/model';
import { thinSpace } from '@flangewise/quantities';
import { CheckBar } from '../look/check-bar';
import { StatusMark, statusClass } from '../look/status-mark';
import type { CheckGroup } from './check-groups';

const namedParts = 2;

/** "6 Cooling, 7 Vessel", or how many parts there are. */
const partsText = (paths: readonly string[], numbers: ReadonlyMap<SlotPath, number>): string => {
  const named = paths.flatMap((path) => {
    const parsed = parseSlotPath(path);
    if (parsed === undefined) return [];
    const number = numbers.get(path as SlotPath);
    return [`${number === undefined ? '' : `${String(number)}\u2002`}${slots[parsed.slot].title}`];
  });
  return named.length <= namedParts
    ? named.join(', ')
    : `${named.slice(0, 1).join('')} and ${String(named.length - 1)} more`;
};

const words: Readonly<Record<CheckGroup['result']['status'], string>> = {
  met: 'met',
  'met with caution': 'with care',
  'not met': 'not met',
  'outside standard range': 'review',
  'not decidable': 'to ask',
};

/** The unit is said once, after the limit. */
const withoutUnit = (demand: string, limit: string): string => {
  const unit = limit.slice(limit.lastIndexOf(thinSpace));
  return limit.includes(thinSpace) && demand.endsWith(unit) ? demand.slice(0, -unit.length) : demand;
};

/** Demand of limit; "?" where nobody knows; the limit alone where nothing is demanded. */
function Figures({ group }: { readonly group: CheckGroup }) {
  const { demand, limit } = group.row;
  if (demand === '' && limit === '') return null;
  if (limit === '') return <b className="font-semibold text-ink">{demand}</b>;
  if (demand === '' && group.result.status !== 'not decidable')
    return <b className="font-semibold text-ink">{limit}</b>;
  return (
    <>
      <b className="font-semibold text-ink">{demand === '' ? '?' : withoutUnit(demand, limit)}</b> of {limit}
    </>
  );
}

export interface CheckRowProps {
  readonly group: CheckGroup;
  readonly numbers: ReadonlyMap<SlotPath, number>;
  /** Name of the vessel set, where there are several. */
  readonly setName: string | undefined;
  readonly onOpen: () => void;
}

/** State, name, utilisation, demand and limit, margin; opens the evidence. */
export function CheckRowView({ group, numbers, setName, onOpen }: CheckRowProps) {
  const { result, row } = group;
  const calm = result.status === 'met';
  const isDrawn = result.utilisation !== undefined || result.status === 'not decidable';
  return (
    <button
      type="button"
      onClick={onOpen}
      className="row grid min-h-9 w-full cursor-pointer grid-cols-[22px_minmax(0,1fr)_132px] items-center gap-y-0.5 py-[3px] text-left hover:bg-given-t sm:grid-cols-[22px_minmax(0,1fr)_98px_132px]"
    >
      <StatusMark status={result.status} />
      <span className="min-w-0 leading-4 font-medium">
        {result.title}
        <span className="lab block truncate">
          {setName === undefined ? '' : `${setName}: `}
          {partsText(group.slots, numbers)}
        </span>
      </span>
      <span className="hidden sm:block">
        {isDrawn && <CheckBar status={result.status} utilisation={result.utilisation} width={92} />}
      </span>
      <span className="pl-2 text-right text-[12px] leading-4 whitespace-nowrap text-ink2">
        <Figures group={group} />
        <span className={`block font-medium ${calm ? 'text-ink' : statusClass(result.status)}`}>
          {row.margin === '' || row.margin === 'open' ? words[result.status] : row.margin}
        </span>
      </span>
    </button>
  );
}
