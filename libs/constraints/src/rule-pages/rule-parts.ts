import { type RulePage, type SlotName, slots } from '@flangewise/model';
import type { Reads, Rule } from '../rule.js';
import { attributeWords } from './attribute-words.js';

type Part = RulePage['parts'][number];

const partOf = (slot: SlotName, attributes: readonly string[], as?: string): Part => ({
  slot,
  title: slots[slot].title,
  ...(as === undefined ? {} : { as }),
  attributes: attributes.filter((key) => key !== 'name').map((key) => attributeWords(slot, key)),
});

const partsOf = (reads: Reads, as?: string): readonly Part[] =>
  (Object.entries(reads) as [SlotName, readonly string[]][]).map(([slot, attributes]) =>
    partOf(slot, attributes, as),
  );

/** The parts that a rule looks at, with what it reads of each. */
export const rulePartsOf = (rule: Rule): readonly Part[] => {
  switch (rule.form) {
    case 'comparison':
      return [...partsOf(rule.demandOf, 'demand'), ...partsOf(rule.limitOf, 'limit')];
    case 'judgement':
      return partsOf(rule.of);
    case 'part':
      return [...rule.each.map((slot) => partOf(slot, rule.reads)), ...partsOf(rule.beside, 'beside')];
    case 'sum':
      return [
        ...rule.terms.map((slot) => partOf(slot, [], 'term of the sum')),
        ...partsOf(rule.limitOf, 'limit'),
      ];
    case 'ports':
      return [
        partOf(rule.host, ['ports', 'bore'], 'has the ports'),
        ...rule.users.map((slot) => partOf(slot, ['portsM', 'reachM', 'givesPortsM'], 'needs ports')),
        ...rule.obstacles.map(({ slot, reads }) => partOf(slot, reads, 'stands below')),
      ];
  }
};
