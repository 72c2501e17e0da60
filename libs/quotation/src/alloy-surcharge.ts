import { Decimal } from 'decimal.js';
import type { Item, PriceList } from '@flangewise/model';
import { Money } from './money.js';

/** The material of a part that weighs: what carries the pressure under a lining, else what it is made of. */
export const weighingMaterialOf = (item: Item): string | undefined => {
  const { carrier, material } = item as { readonly carrier?: string | null; readonly material?: string };
  return item.slot === 'material' ? undefined : (carrier ?? material);
};

/** Rate of a list for the material of a part, per kilogram; undefined where it charges none. */
export const surchargeRateOf = (list: Pick<PriceList, 'alloySurcharges'>, item: Item): Money | undefined => {
  const material = weighingMaterialOf(item);
  const found = list.alloySurcharges?.find((row) => row.material === material);
  return found === undefined ? undefined : new Money(found.perKg);
};

/**
 * Alloy surcharge of one piece: its mass times the rate of its material, rounded to whole units half away from zero,
 * since a search adds whole prices.
 */
export const alloySurchargeOf = (list: Pick<PriceList, 'alloySurcharges'>, item: Item): Money =>
  (surchargeRateOf(list, item)?.times(item.massKg) ?? new Money(0)).toDecimalPlaces(0, Decimal.ROUND_HALF_UP);
