import { type Item, slotNames } from '@flangewise/model';
import { caution } from '../../figure.js';
import { partRule } from '../../rule.js';
import { commonPractice } from '../../source.js';

type Ending = Pick<Item, 'name' | 'successor' | 'validUntil'>;

const endOf = ({ name, successor, validUntil }: Ending): string =>
  `${name} is to be discontinued${validUntil === undefined ? '' : `, last sold on ${validUntil}`}: ${
    successor === undefined ? 'ask for its successor' : `${successor} follows it`
  }, and spare parts end with it.`;

export const itemLife = partRule({
  id: 'supply.item-life',
  title: 'Parts stay in the range',
  group: 'supply',
  kind: 'advice',
  each: slotNames,
  reads: ['life', 'successor', 'validUntil'],
  beside: {},
  conditions: [],
  judge: (part) => (part.life === 'to be discontinued' ? caution(endOf(part)) : undefined),
  met: 'Every part stays in the range.',
  source: [commonPractice('who buys a part that is about to go is told what follows it')],
});
