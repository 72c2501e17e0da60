import type { Item, Offer, System } from '@flangewise/model';
import { dateText } from './date-text.js';
import type { Issue, Row, TitleBlockView } from './issue.js';
import { moneyText } from './money-text.js';
import { ownCautions } from './own-cautions.js';
import { slotTitles } from './slot-titles.js';
import { summarySentence } from './summary-sentence.js';
import { titleBlockView } from './title-block-view.js';

/** Something that can be had besides, priced apart from the total. */
export interface OfferOption {
  readonly name: string;
  readonly price: string;
  readonly note?: string;
}

/** The letter with prices; every amount as text for people. */
export interface OfferView {
  readonly block: TitleBlockView;
  readonly client: string;
  readonly contact: string | null;
  readonly number: string;
  readonly date: string | null;
  readonly validUntil: string | null;
  readonly title: string;
  readonly scope: string;
  readonly positions: readonly {
    readonly position: string;
    readonly item: string;
    readonly name: string;
    readonly use: string;
    readonly quantity: string;
    /** Null where the reader is not shown what an item costs. */
    readonly unitPrice: string | null;
    readonly total: string | null;
    readonly special: boolean;
    readonly note: string | null;
  }[];
  readonly totals: readonly (Row & { readonly strong: boolean })[];
  readonly options: readonly { readonly name: string; readonly price: string; readonly note: string }[];
  readonly deliveryWeeks: number;
  readonly deliveryChain: readonly Row[];
  readonly terms: readonly string[];
  readonly openPoints: readonly { readonly question: string; readonly why: string }[];
  readonly cautions: readonly string[];
  readonly basis: string;
  readonly watermark: string | null;
}

export interface OfferViewInput {
  readonly system: System;
  readonly items: ReadonlyMap<string, Item>;
  readonly offer: Offer;
  readonly issue: Issue;
  readonly options?: readonly OfferOption[];
  /** What keeps the offer from being released. */
  readonly blocking?: readonly string[];
}

const totalsOf = (offer: Offer, money: (amount: string) => string): OfferView['totals'] => {
  const hasDiscount = !/^-?0+(\.0+)?$/.test(offer.discount);
  const hasTax = !/^-?0+(\.0+)?$/.test(offer.tax);
  const row = (label: string, amount: string) => ({ label, value: money(amount), strong: false });
  const quantitySteps = offer.quantitySteps ?? [];
  const services = offer.services ?? [];
  const hasMore = hasDiscount || quantitySteps.length > 0 || services.length > 0;
  return [
    ...(hasMore ? [row('Sum of the positions', offer.listTotal)] : []),
    ...(offer.alloySurcharges ?? []).map(({ material, massKg, perKg, amount }) =>
      row(`of it alloy surcharge ${material}, ${massKg.toFixed(1)} kg at ${perKg}`, amount),
    ),
    ...quantitySteps.map(({ text, amount }) => row(text, amount)),
    ...(hasDiscount
      ? [
          {
            label: `Discount ${offer.discountPercent} %`,
            value: money(offer.discount.startsWith('-') ? offer.discount : `-${offer.discount}`),
            strong: false,
          },
        ]
      : []),
    ...services.map(({ text, amount }) => row(text, amount)),
    { label: hasTax ? 'Net' : 'Total, without tax', value: money(offer.net), strong: !hasTax },
    ...(hasTax
      ? [
          { label: `Tax ${offer.taxPercent} %`, value: money(offer.tax), strong: false },
          { label: 'Total', value: money(offer.total), strong: true },
        ]
      : []),
  ];
};

export const offerViewOf = ({
  system,
  items,
  offer,
  issue,
  options = [],
  blocking = [],
}: OfferViewInput): OfferView => {
  const money = (amount: string): string => moneyText(amount, offer.currency);
  return {
    block: titleBlockView({ system, offer, issue, blocking }),
    client: offer.client ?? system.inquiry.client ?? 'Client not named',
    contact: system.inquiry.contact ?? null,
    number: `${offer.number}-${offer.revision}`,
    date: offer.date === undefined ? null : dateText(offer.date),
    validUntil: offer.validUntil === undefined ? null : dateText(offer.validUntil),
    title: offer.title,
    scope: summarySentence(system, items),
    positions: offer.positions.map((line) => ({
      position: String(line.position),
      item: line.item,
      name: line.name,
      use: slotTitles(line.slots),
      quantity: String(line.quantity),
      unitPrice: money(line.unitPrice),
      total: money(line.total),
      special: line.special,
      note: line.note ?? null,
    })),
    totals: totalsOf(offer, money),
    options: options.map(({ name, price, note }) => ({ name, price: money(price), note: note ?? '' })),
    deliveryWeeks: offer.deliveryWeeks,
    deliveryChain: offer.deliveryChain.map(({ step, days }) => ({ label: step, value: `${String(days)} d` })),
    terms: offer.terms,
    openPoints: offer.openPoints.map(({ question, why }) => ({ question, why })),
    cautions: ownCautions(offer.cautions),
    basis: `Price list ${offer.priceList}, catalogue ${offer.catalogueRevision}, rules ${offer.ruleRevision}`,
    watermark: offer.watermark ?? null,
  };
};
