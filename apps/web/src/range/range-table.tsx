import { slots } from '@flangewise/model';
import { thinSpace } from '@flangewise/quantities';
import { memo } from 'react';
import { priceText } from '../figures/price';
import type { Part, PartGroup } from './find-parts';

export interface Prices {
  readonly currency: string;
  readonly of: Readonly<Record<string, number>>;
}

export interface RangeTableProps {
  readonly groups: readonly PartGroup[];
  /** Undefined for those who see no prices; they see no delivery time of single parts either. */
  readonly prices: Prices | undefined;
}

const together = (texts: readonly string[]): string => texts.join(' · ');

function Row({ part, prices }: { readonly part: Part; readonly prices: Prices | undefined }) {
  const { item, rating, values, mass } = part;
  const price = prices?.of[item.id];
  return (
    <tr className="hover:bg-given-t">
      <td className="whitespace-nowrap text-ink2 max-sm:hidden">{item.id}</td>
      <td>
        <span className="lab block sm:hidden">{item.id}</span>
        <span className="font-medium">{item.name}</span>
        {item.life !== 'current' && <span className="lab ml-2">{item.life}</span>}
        <span className="block text-ink2 lg:hidden">{together([...values, ...rating])}</span>
      </td>
      <td className="text-ink2 max-lg:hidden">
        {together(values)}
        <span className="block xl:hidden">{together(rating)}</span>
      </td>
      <td className="text-ink2 max-xl:hidden">{together(rating)}</td>
      <td className="num text-ink2 max-md:hidden">{mass}</td>
      {prices !== undefined && (
        <>
          <td className="num text-ink2 max-sm:hidden">
            {item.leadTimeDays}
            {thinSpace}d
          </td>
          <td className="num">{price === undefined ? 'not listed' : priceText(price, prices.currency)}</td>
        </>
      )}
    </tr>
  );
}

/** The parts of the range, slot by slot. */
export const RangeTable = memo(function RangeTable({ groups, prices }: RangeTableProps) {
  return (
    <table className="tab lg:table-fixed">
      <caption className="sr-only">Parts of the range</caption>
      <thead>
        <tr>
          <th scope="col" className="w-20 max-sm:hidden">
            Number
          </th>
          <th scope="col" className="lg:w-[28%]">
            Name
          </th>
          <th scope="col" className="max-lg:hidden">
            Main values
          </th>
          <th scope="col" className="w-[264px] max-xl:hidden">
            Stands
          </th>
          <th scope="col" className="num w-20 max-md:hidden">
            Mass
          </th>
          {prices !== undefined && (
            <>
              <th scope="col" className="num w-16 max-sm:hidden">
                Ready in
              </th>
              <th scope="col" className="num w-[84px]">
                List price
              </th>
            </>
          )}
        </tr>
      </thead>
      {groups.map(({ slot, parts }) => (
        <tbody key={slot}>
          <tr>
            <th scope="rowgroup" colSpan={2} className="border-b-0! pt-5! text-[13px]! text-ink!">
              <span className="font-semibold">{slots[slot].title}</span>{' '}
              <span className="lab">{parts.length === 1 ? 'one part' : `${String(parts.length)} parts`}</span>
            </th>
          </tr>
          {parts.map((part) => (
            <Row key={part.item.id} part={part} prices={prices} />
          ))}
        </tbody>
      ))}
    </table>
  );
});
