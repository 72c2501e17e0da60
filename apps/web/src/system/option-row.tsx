import type { SlotOption } from '../engine/protocol';
import { marginText } from '../figures/margin';
import { daysDifferenceText, priceDifferenceText } from '../figures/price';
import { StatusMark, statusClass } from '../look/status-mark';

export interface OptionRowProps {
  readonly option: SlotOption;
  readonly group: string;
  readonly isChosen: boolean;
  /** Working days of the system as it is chosen. */
  readonly days: number | undefined;
  readonly currency: string | undefined;
  readonly onTake: () => void;
}

/** One option that leads to a valid whole: what it would change. */
export function OptionRow({ option, group, isChosen, days, currency, onTake }: OptionRowProps) {
  const { name, priceDifference, effect } = option;
  const margin = effect?.leastMargin;
  return (
    <tr className={isChosen ? 'bg-given-t font-semibold' : 'hover:bg-well'}>
      <td className="w-[22px] pl-1.5!">
        <input
          type="radio"
          className="dot align-[-2px]"
          name={group}
          id={`${group}-${option.id ?? 'none'}`}
          checked={isChosen}
          onChange={onTake}
        />
      </td>
      <td>
        <label htmlFor={`${group}-${option.id ?? 'none'}`} className="block cursor-pointer">
          {name}
        </label>
      </td>
      {currency !== undefined && (
        <td className="num">
          {isChosen
            ? 'chosen'
            : priceDifference === null
              ? ''
              : priceDifferenceText(priceDifference, currency)}
        </td>
      )}
      <td className="num">
        {isChosen
          ? currency === undefined
            ? 'chosen'
            : ''
          : effect === undefined || days === undefined
            ? ''
            : daysDifferenceText(effect.days - days)}
      </td>
      <td
        className={`num ${effect === undefined || effect.status === 'met' ? '' : statusClass(effect.status)}`}
      >
        {margin === undefined || margin === null ? 'open' : marginText(margin.value)}{' '}
        {effect !== undefined && <StatusMark status={effect.status} />}
      </td>
    </tr>
  );
}
