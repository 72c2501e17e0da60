import { succeed } from '@flangewise/model';
import type { Command } from '../command.js';
import { exitCodes } from '../exit-code.js';
import { openRange } from '../range/open-range.js';
import { auditText } from '../text/audit-text.js';

export const auditCommand: Command = {
  usage: 'audit',
  summary: 'the catalogue audited: dead items, redundant rules, gaps',
  examples: ['flangewise audit'],
  details: 'Takes some seconds: every rule is tried against all others, and a table of inquiries is asked.',
  run: async ({ options, terminal }) => {
    const range = await openRange(options, { inquiry: {} }, terminal);
    if (!range.ok) return range;
    const { audit } = await import('@flangewise/constraints');
    const answer = audit(range.value.bench);
    return succeed({
      exit: exitCodes.done,
      told: { document: answer, words: (columns) => auditText(answer, columns) },
      notes: range.value.notes,
    });
  },
};
