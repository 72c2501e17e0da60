import { type SlotName, slots } from '@flangewise/model';
import type { Measure, Rule } from '../rule.js';
import { usualCautionFrom } from '../compare.js';
import { shownQuantity } from '../shown-quantity.js';

const titles = (names: Iterable<SlotName>): string => {
  const words = [...new Set(names)].map((slot) => slots[slot].title.toLowerCase());
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`;
};

export const effectOf: Readonly<Record<Rule['kind'], string>> = {
  hard: 'What does not meet it is refused.',
  caution: 'It refuses nothing: it says what calls for care.',
  advice: 'It refuses nothing: it tells what follows.',
};

/** What is set against what. */
export const decidesOf = (rule: Rule): readonly string[] => {
  switch (rule.form) {
    case 'comparison': {
      const demand = titles(Object.keys(rule.demandOf) as SlotName[]);
      const limit = titles(Object.keys(rule.limitOf) as SlotName[]);
      return [
        `Demand ≤ limit. The demand comes from ${demand === '' ? 'the process alone' : demand}, the limit from ${limit === '' ? 'the process alone' : limit}.`,
      ];
    }
    case 'judgement':
      return ['Judges the parts below together, under the conditions below.'];
    case 'part':
      return [
        `Judges each part by itself${Object.keys(rule.beside).length === 0 ? '' : `, beside ${titles(Object.keys(rule.beside) as SlotName[])}`}.`,
      ];
    case 'sum':
      return [
        `Demand ≤ limit. The demand is a sum over ${rule.over === 'one vessel' ? 'the parts of one vessel' : 'the parts of all vessels that work at once'}, the limit comes from ${titles(Object.keys(rule.limitOf) as SlotName[])}.`,
      ];
    case 'ports':
      return [
        'Gives every part that needs a port of the cover one of its own, if any assignment can.',
        `What reaches down goes through upright ports only, and stands clear of ${titles(rule.obstacles.map(({ slot }) => slot))}.`,
      ];
  }
};

const isMeasured = (rule: Rule): rule is Rule & Measure => rule.form === 'comparison' || rule.form === 'sum';

/** How much of the limit is used, and from where on that calls for care. */
export const marginOf = (rule: Rule): string | undefined => {
  if (!isMeasured(rule)) return undefined;
  const from = rule.cautionFrom ?? usualCautionFrom;
  const care =
    from > 1
      ? 'It may be used up in full.'
      : `From ${String(Number((100 * from).toPrecision(3)))} % on, what is met calls for care.`;
  return rule.utilisation === 'ratio'
    ? `Demand over limit. ${care}`
    : `Distance to the limit on a scale of ${shownSpan(rule.utilisation.span, rule.unit)}. ${care}`;
};

/** A span of temperatures is a difference, not a point of the scale. */
const shownSpan = (span: number, unit: string): string =>
  unit === 'K' ? `${String(span)} K` : shownQuantity(span, unit);
