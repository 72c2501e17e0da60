import type { Outputs } from '../api/client';
import { exactPriceText } from '../figures/price';

type Offer = Outputs['offers']['get']['offer'];

/** Positions of an offer; without prices for those who see none of parts. */
export function Positions({ offer }: { readonly offer: Offer }) {
  const priced = offer.positions.some(({ total }) => total !== null);
  return (
    <table className="tab">
      <caption className="sr-only">Positions</caption>
      <thead>
        <tr>
          <th className="w-8">Pos.</th>
          <th>Part</th>
          <th className="num">Quantity</th>
          {priced && <th className="num max-sm:hidden">Each</th>}
          {priced && <th className="num">Total</th>}
        </tr>
      </thead>
      <tbody>
        {offer.positions.map((position) => (
          <tr key={position.position}>
            <td className="text-ink2">{position.position}</td>
            <td>
              {position.name}
              <span className="lab block">
                {position.item}
                {position.note === undefined ? '' : ` · ${position.note}`}
              </span>
            </td>
            <td className="num">{position.quantity}</td>
            {priced && (
              <td className="num text-ink2 max-sm:hidden">
                {position.unitPrice === null
                  ? 'not listed'
                  : exactPriceText(position.unitPrice, offer.currency)}
              </td>
            )}
            {priced && (
              <td className="num">
                {position.total === null ? 'not listed' : exactPriceText(position.total, offer.currency)}
              </td>
            )}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
