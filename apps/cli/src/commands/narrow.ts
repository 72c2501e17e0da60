import { succeed } from '@flangewise/model';
import type { Command } from '../command.js';
import { exitCodes } from '../exit-code.js';
import { readSystem } from '../input/read-system.js';
import { narrowText } from '../text/narrow-text.js';

export const narrowCommand: Command = {
  usage: 'narrow <system>',
  summary: 'for every slot the options that still lead to a valid whole',
  examples: ['flangewise narrow system.json'],
  details:
    'Each slot is reconsidered alone while every other choice is kept. An inquiry counts as a system without choices.',
  run: async (request) => {
    const read = await readSystem(request, { orInquiry: true });
    if (!read.ok) return read;
    const { system, title, bench, openPoints, notes } = read.value;
    const { narrow } = await import('@flangewise/constraints');
    const answer = narrow(system, bench);
    return succeed({
      exit: answer.consistent ? exitCodes.done : exitCodes.notValid,
      told: {
        document: answer,
        words: (columns) =>
          narrowText(
            {
              title,
              answer,
              openPoints,
              items: bench.range.items,
            },
            columns,
          ),
      },
      notes,
    });
  },
};
