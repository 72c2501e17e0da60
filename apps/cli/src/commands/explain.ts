import { succeed } from '@flangewise/model';
import type { Command } from '../command.js';
import { exitCodes } from '../exit-code.js';
import { readSystem } from '../input/read-system.js';
import { explainText } from '../text/explain-text.js';

export const explainCommand: Command = {
  usage: 'explain <system>',
  summary: 'minimal conflicts of a system or an inquiry, and the smallest changes that mend them',
  examples: ['flangewise explain system.json'],
  details: 'An inquiry counts as a system without choices.',
  run: async (request) => {
    const read = await readSystem(request, { orInquiry: true });
    if (!read.ok) return read;
    const { system, title, bench, range, openPoints, notes } = read.value;
    const { explain } = await import('@flangewise/constraints');
    const answer = explain(system, bench);
    return succeed({
      exit: answer.result === 'consistent' ? exitCodes.done : exitCodes.notValid,
      told: {
        document: answer,
        words: (columns) =>
          explainText(
            {
              title,
              answer,
              openPoints,
              currency: bench.range.prices === undefined ? undefined : range.priceList?.currency,
            },
            columns,
          ),
      },
      notes,
    });
  },
};
