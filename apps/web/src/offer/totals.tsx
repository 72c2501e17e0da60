import type { Outputs } from '../api/client';
import { exactPriceText } from '../figures/price';

type Offer = Outputs['offers']['get']['offer'];

interface Line {
  readonly label: string;
  readonly value: string;
  readonly strong?: boolean;
}

const isZero = (amount: string): boolean => /^-?0+(\.0+)?$/.test(amount);

const linesOf = (offer: Offer): readonly Line[] => [
  { label: 'List total', value: offer.listTotal },
  ...(offer.alloySurcharges ?? []).map(({ material, amount }) => ({
    label: `of it alloy surcharge ${material}`,
    value: amount,
  })),
  ...(offer.quantitySteps ?? []).map(({ text, amount }) => ({ label: text, value: amount })),
  ...(isZero(offer.discount)
    ? []
    : [{ label: `Discount ${offer.discountPercent} %`, value: `-${offer.discount.replace('-', '')}` }]),
  ...(offer.services ?? []).map(({ text, amount }) => ({ label: text, value: amount })),
  { label: 'Net', value: offer.net, strong: isZero(offer.tax) },
  ...(isZero(offer.tax)
    ? []
    : [
        { label: `Tax ${offer.taxPercent} %`, value: offer.tax },
        { label: 'Total', value: offer.total, strong: true },
      ]),
];

/** From list total to what the client pays. */
export function Totals({ offer }: { readonly offer: Offer }) {
  return (
    <dl className="ml-auto grid w-full max-w-[360px] gap-y-1 pt-3">
      {linesOf(offer).map(({ label, value, strong }) => (
        <div
          key={label}
          className={`flex justify-between gap-6 ${strong === true ? 'border-t-[1.4px] border-ink pt-1 text-total font-semibold' : ''}`}
        >
          <dt>{label}</dt>
          <dd className="num">{exactPriceText(value, offer.currency)}</dd>
        </div>
      ))}
    </dl>
  );
}
