import type { Item, SlotName } from '@flangewise/model';
import { z } from 'zod';
import data from './data/trade-facts.json' with { type: 'json' };

const slotFacts = z.strictObject({
  tariffNumber: z.string().regex(/^\d{4}\.\d{2}$/),
  unspsc: z.string().regex(/^\d{8}$/),
});

export const tradeFactsSchema = z.strictObject({
  about: z.string(),
  source: z.strictObject({ tariff: z.string(), unspsc: z.string() }),
  originCountry: z.string().regex(/^[A-Z]{2}$/),
  originSource: z.string(),
  slots: z.record(z.string(), slotFacts),
});

/** What customs and buyers class an item by; papers and materials are no goods and have none. */
export interface TradeFacts {
  readonly tariffNumber: string;
  readonly originCountry: string;
  readonly unspsc: string;
}

const bySlot: Readonly<Partial<Record<SlotName, Omit<TradeFacts, 'originCountry'>>>> = data.slots;

/** What an item says of itself, else what its slot and maker say; undefined for what is no goods. */
export const tradeFactsOf = (
  item: Pick<Item, 'slot' | 'tariffNumber' | 'originCountry' | 'unspsc'>,
): TradeFacts | undefined => {
  const usual = bySlot[item.slot];
  return usual === undefined
    ? undefined
    : {
        tariffNumber: item.tariffNumber ?? usual.tariffNumber,
        originCountry: item.originCountry ?? data.originCountry,
        unspsc: item.unspsc ?? usual.unspsc,
      };
};
