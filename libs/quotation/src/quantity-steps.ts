import type { PriceList } from '@flangewise/model';
import { Money, percentOf } from './money.js';

/** What a line gets off for its quantity, in percent; 0 below the first step. */
export const quantityPercentOf = (list: Pick<PriceList, 'quantitySteps'>, quantity: number): Money =>
  (list.quantitySteps ?? [])
    .filter(({ from }) => quantity >= from)
    .map(({ percent }) => new Money(percent))
    .reduce((highest, next) => Money.max(highest, next), new Money(0));

/** What a line gets off for its quantity: a share of its total, rounded to cents half away from zero. */
export const quantityReductionOf = (
  list: Pick<PriceList, 'quantitySteps'>,
  line: { readonly quantity: number; readonly total: Money },
): Money => percentOf(line.total, quantityPercentOf(list, line.quantity));
