import {
  type Catalogue,
  fail,
  type Item,
  type Offer,
  type OpenPoint,
  type Outcome,
  type Position,
  type PriceList,
  succeed,
  type System,
} from '@flangewise/model';
import { alloySurchargeOf, surchargeRateOf, weighingMaterialOf } from './alloy-surcharge.js';
import { type BillLine, billOfMaterials, type SpecialPart } from './bill-of-materials.js';
import { choosePriceList, priceWishOf } from './choose-price-list.js';
import { deliveryOf } from './delivery.js';
import { readDiscount } from './discount.js';
import { listPriceOf } from './find-price.js';
import { Money, moneyText } from './money.js';
import { quantityPercentOf, quantityReductionOf } from './quantity-steps.js';
import { blockingOf, watermarkOf } from './release.js';
import { type PricedService, pricedServices } from './services.js';
import terms from './terms.json' with { type: 'json' };
import { totalsOf } from './totals.js';
import type { QuotationTrouble } from './trouble.js';
import { validUntilOf } from './validity.js';

export interface OfferInput {
  readonly system: System;
  readonly catalogue: Catalogue;
  /** Parts that stand in no price list, with the price that the engineer's method gave. */
  readonly specials?: readonly SpecialPart[];
  readonly state?: Offer['state'];
  readonly ruleRevision: string;
  readonly openPoints?: readonly OpenPoint[];
  readonly cautions?: readonly string[];
  /** What the assessment says against a release, each a sentence. */
  readonly blocking?: readonly string[];
}

export interface MadeOffer {
  readonly offer: Offer;
  readonly blocking: readonly string[];
  /** Working days; the offer says weeks. */
  readonly deliveryDays: number;
}

interface PricedLine {
  readonly line: BillLine;
  /** Of one piece, within the unit price. */
  readonly surcharge: Money;
  readonly unitPrice: Money;
  readonly total: Money;
}

const specialPrice = ({ item, price }: SpecialPart, list: PriceList): Outcome<Money, QuotationTrouble> =>
  price === undefined
    ? fail({
        code: 'QUOTE_NO_PRICE',
        message: `${item.id} (${item.name}) is a special, and ${list.id} has no rates for its material; add them to the list`,
      })
    : succeed(new Money(price));

const priceLine = (line: BillLine, list: PriceList): Outcome<PricedLine, QuotationTrouble> => {
  const price = line.special === undefined ? listPriceOf(list, line.item) : specialPrice(line.special, list);
  if (!price.ok) return price;
  const surcharge = line.special === undefined ? alloySurchargeOf(list, line.item) : new Money(0);
  const unitPrice = price.value.plus(surcharge);
  return succeed({ line, surcharge, unitPrice, total: unitPrice.times(line.quantity) });
};

const successorOf = ({ successor }: Item): string =>
  successor === undefined ? 'choose a successor' : `${successor} follows it`;

const lastOrderOf = (item: Item): string =>
  item.validUntil === undefined
    ? 'ask for the last order date'
    : `sold until ${item.validUntil}, ${successorOf(item)}`;

const noteOf = ({ item, special }: BillLine): { readonly note?: string } => {
  if (special !== undefined)
    return {
      note: ['Special, priced by method; outside the standard range', ...(special.deviations ?? [])].join(
        '; ',
      ),
    };
  if (item.life === 'to be discontinued') return { note: `To be discontinued: ${lastOrderOf(item)}` };
  if (item.life === 'discontinued') return { note: `Discontinued: ${successorOf(item)}` };
  return {};
};

const surchargeText = (surcharge: Money): string =>
  surcharge.isZero() ? '' : `Alloy surcharge ${moneyText(surcharge)} each included`;

const notesOf = ({ line, surcharge }: PricedLine): { readonly note?: string } => {
  const notes = [noteOf(line).note ?? '', surchargeText(surcharge)].filter((text) => text !== '');
  return notes.length === 0 ? {} : { note: notes.join('. ') };
};

/** Alloy surcharges by material, in the order in which they come up. */
const surchargesOf = (priced: readonly PricedLine[], list: PriceList): Offer['alloySurcharges'] => {
  const byMaterial = new Map<string, { massKg: Money; perKg: Money; amount: Money }>();
  for (const { line, surcharge } of priced) {
    const material = weighingMaterialOf(line.item);
    const perKg = surchargeRateOf(list, line.item);
    if (material === undefined || perKg === undefined || surcharge.isZero()) continue;
    const before = byMaterial.get(material) ?? { massKg: new Money(0), amount: new Money(0) };
    byMaterial.set(material, {
      massKg: before.massKg.plus(new Money(line.item.massKg).times(line.quantity)),
      perKg,
      amount: before.amount.plus(surcharge.times(line.quantity)),
    });
  }
  return [...byMaterial].map(([material, { massKg, perKg, amount }]) => ({
    material,
    massKg: massKg.toNumber(),
    perKg: moneyText(perKg),
    amount: moneyText(amount),
  }));
};

const positionOf = (priced: PricedLine, index: number): Position => ({
  position: index + 1,
  item: priced.line.item.id,
  name: priced.line.item.name,
  slots: [...priced.line.slots],
  quantity: priced.line.quantity,
  unitPrice: moneyText(priced.unitPrice),
  total: moneyText(priced.total),
  special: priced.line.special !== undefined,
  ...notesOf(priced),
});

/** What a list adds and takes beside prices; left out where it does neither. */
const termsOf = (
  {
    priced,
    reductions,
    services,
  }: {
    readonly priced: readonly PricedLine[];
    readonly reductions: readonly Money[];
    readonly services: readonly PricedService[];
  },
  list: PriceList,
): Pick<Offer, 'alloySurcharges' | 'quantitySteps' | 'services'> => {
  const alloySurcharges = surchargesOf(priced, list) ?? [];
  const quantitySteps = priced.flatMap(({ line }, index) => {
    const reduction = reductions[index] ?? new Money(0);
    const percent = quantityPercentOf(list, line.quantity);
    return reduction.isZero()
      ? []
      : [
          {
            text: `${String(line.quantity)} × ${line.item.name}: ${percent.toString()} % off`,
            amount: moneyText(reduction.negated()),
          },
        ];
  });
  return {
    ...(alloySurcharges.length === 0 ? {} : { alloySurcharges }),
    ...(quantitySteps.length === 0 ? {} : { quantitySteps }),
    ...(services.length === 0
      ? {}
      : {
          services: services.map(({ rate, quantity, amount }) => ({
            text: `${rate.title}, ${String(quantity)} ${rate.unit}${quantity === 1 ? '' : 's'} at ${moneyText(new Money(rate.rate))}`,
            amount: moneyText(amount),
          })),
        }),
  };
};

const datesOf = (
  date: string | undefined,
  list: PriceList,
): Outcome<Pick<Offer, 'date' | 'validUntil'>, QuotationTrouble> => {
  if (date === undefined) return succeed({});
  const validUntil = validUntilOf(date, list);
  return validUntil.ok ? succeed({ date, validUntil: validUntil.value }) : validUntil;
};

/**
 * The offer of a system: bill of materials, prices of one list, discount, tax, delivery time, terms, and what still
 * keeps it from being released.
 *
 * @error as choosePriceList, validUntilOf, billOfMaterials, listPriceOf and readDiscount; QUOTE_UNKNOWN_PRICE_LIST
 *   where the catalogue has none
 */
export const makeOffer = (input: OfferInput): Outcome<MadeOffer, QuotationTrouble> => {
  const { system, catalogue, specials = [] } = input;
  const asked = system.offer;
  const chosen = choosePriceList(catalogue, priceWishOf(system));
  if (!chosen.ok) return chosen;
  const list = chosen.value;
  if (list === undefined)
    return fail({ code: 'QUOTE_UNKNOWN_PRICE_LIST', message: 'this catalogue holds no price list' });
  const dates = datesOf(asked?.date, list);
  if (!dates.ok) return dates;
  const bill = billOfMaterials({ system, catalogue, specials });
  if (!bill.ok) return bill;
  const discount = readDiscount(asked?.discountPercent ?? '0');
  if (!discount.ok) return discount;

  const priced: PricedLine[] = [];
  for (const line of bill.value) {
    const one = priceLine(line, list);
    if (!one.ok) return one;
    priced.push(one.value);
  }
  const taxPercent = new Money(asked?.taxPercent ?? terms.taxPercent);
  const services = pricedServices(list, asked?.services ?? []);
  if (!services.ok) return services;
  const reductions = priced.map(({ line, total }) =>
    quantityReductionOf(list, { quantity: line.quantity, total }),
  );
  const totals = totalsOf({
    positions: priced.map((line) => line.total),
    quantityReductions: reductions,
    services: services.value.map(({ amount }) => amount),
    discountPercent: discount.value.percent,
    taxPercent,
  });
  const delivery = deliveryOf(bill.value);
  const blocking = blockingOf({
    lines: bill.value,
    discount: discount.value,
    discountReleasedBy: asked?.discountReleasedBy,
    technical: input.blocking ?? [],
    date: asked?.date,
  });
  const watermark = watermarkOf(blocking);
  const client = asked?.client ?? system.inquiry.client;
  const offer: Offer = {
    number: asked?.number ?? 'draft',
    revision: asked?.revision ?? '1',
    state: input.state ?? 'draft',
    title: system.inquiry.title,
    ...(client === undefined ? {} : { client }),
    ...dates.value,
    catalogueRevision: catalogue.revision,
    ruleRevision: input.ruleRevision,
    priceList: list.id,
    currency: list.currency,
    positions: priced.map(positionOf),
    ...termsOf({ priced, reductions, services: services.value }, list),
    listTotal: moneyText(totals.list),
    discountPercent: discount.value.percent.toString(),
    discount: moneyText(totals.discount),
    net: moneyText(totals.net),
    taxPercent: taxPercent.toString(),
    tax: moneyText(totals.tax),
    total: moneyText(totals.total),
    deliveryWeeks: delivery.weeks,
    deliveryChain: delivery.chain.map((step) => ({ ...step })),
    terms: [...terms.terms],
    openPoints: [...(input.openPoints ?? [])],
    cautions: [...(input.cautions ?? [])],
    ...(watermark === undefined ? {} : { watermark }),
  };
  return succeed({ offer, blocking, deliveryDays: delivery.days });
};
