import type { Offer, OfferAnswer } from '@flangewise/model';
import { page, points, section } from './section.js';
import { counted, moneyTexts } from './status-text.js';
import { table } from './table.js';
import { hanging } from './wrap.js';

export interface OfferTextInput {
  readonly folder: string;
  readonly offer: Offer;
  readonly answer: OfferAnswer;
}

const sized = (bytes: number): string => `${String(Math.ceil(bytes / 1000))} kB`;

const totals = (offer: Offer): readonly (readonly string[])[] => {
  const lines = [
    { label: 'List', amount: offer.listTotal },
    ...(offer.alloySurcharges ?? []).map(({ material, amount }) => ({
      label: `of it alloy surcharge ${material}`,
      amount,
    })),
    ...(offer.quantitySteps ?? []).map(({ text, amount }) => ({ label: text, amount })),
    ...(Number(offer.discountPercent) === 0
      ? []
      : [{ label: `Discount ${offer.discountPercent} %`, amount: `-${offer.discount}` }]),
    ...(offer.services ?? []).map(({ text, amount }) => ({ label: text, amount })),
    ...(Number(offer.taxPercent) === 0 ? [] : [{ label: `Tax ${offer.taxPercent} %`, amount: offer.tax }]),
    { label: 'Total', amount: offer.total },
  ];
  const amounts = moneyTexts(lines.map(({ amount }) => amount));
  return lines.map(({ label }, k) => [label, amounts[k] ?? '']);
};

/** What was written, what it costs, and what keeps it from being released. */
export const offerText = ({ folder, offer, answer }: OfferTextInput, columns: number): string =>
  page(
    [
      `${offer.title}\n${hanging('', `Offer ${offer.number}-${offer.revision}, ${answer.released ? 'released' : 'NOT RELEASED'}; ${counted(offer.positions.length, 'position')}, price list ${offer.priceList}, ${counted(offer.deliveryWeeks, 'week')}.`, columns)}`,
    ],
    section(offer.currency, table([{ title: '' }, { title: '', align: 'right' }], totals(offer), columns)),
    section('Keeps it from being released', points([...new Set(answer.blocking)], columns)),
    section(
      `Written to ${folder}`,
      table(
        [{ title: '' }, { title: '', align: 'right' }],
        answer.files.map(({ name, bytes }) => [name, sized(bytes)]),
        columns,
      ),
    ),
  );
