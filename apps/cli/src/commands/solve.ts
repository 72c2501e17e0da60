import { type CandidateInput, type InquiryInput, type SolveAnswer, succeed } from '@flangewise/model';
import { type Answer, type Command, type Options, textOption } from '../command.js';
import { exitCodes } from '../exit-code.js';
import { mediumNotes } from '../input/medium-notes.js';
import { readInquiry } from '../input/read-inquiry.js';
import { openRange } from '../range/open-range.js';
import { openPointsNote } from '../text/open-points.js';
import { solveText } from '../text/solve-text.js';
import { type OrRefusal, refuse } from '../trouble.js';

const usualMost = 8;
const largestMost = 26;

const readMost = (options: Options): OrRefusal<number> => {
  const given = textOption(options, 'most');
  if (given === undefined) return succeed(usualMost);
  const most = Number(given);
  return Number.isInteger(most) && most >= 1 && most <= largestMost
    ? succeed(most)
    : refuse({
        code: 'USAGE',
        path: '--most',
        given,
        message: `give a whole number from 1 to ${String(largestMost)}`,
      });
};

const exitOf = ({ result }: SolveAnswer): Answer['exit'] =>
  result === 'systems found' ? exitCodes.done : exitCodes.notValid;

/** The system document of one candidate, ready for check, narrow and offer. */
const taken = (candidates: readonly CandidateInput[], name: string): OrRefusal<object> => {
  const found = candidates.find((c) => c.name === name.toUpperCase());
  return found === undefined
    ? refuse({
        code: 'USAGE',
        path: '--take',
        given: name,
        message:
          candidates.length === 0
            ? 'there is no system to take'
            : `take one of ${candidates.map((c) => c.name).join(', ')}`,
      })
    : succeed(found.system);
};

/** Media as far as notes need them; the inquiry is known to fit its schema. */
const mediaOf = (inquiry: InquiryInput) =>
  (inquiry.process?.media ?? []) as Parameters<typeof mediumNotes>[0];

export const solveCommand: Command = {
  usage: 'solve <inquiry>',
  summary: 'ranked systems that fit an inquiry, and why the others do not',
  examples: ['flangewise solve inquiry.json', 'flangewise solve inquiry.json --take A > system.json'],
  details:
    'With --take the system document of one candidate is printed, ready for check, narrow, explain and offer.',
  options: [
    ['--most <number>', `at most this many systems (${String(usualMost)})`],
    ['--price-list <id>', 'prices of this list; else by the currency of the inquiry, else the first'],
    ['--take <name>', 'print the system of this candidate, for instance A'],
  ],
  run: async ({ operands, options, terminal }) => {
    const most = readMost(options);
    if (!most.ok) return most;
    const inquiry = await readInquiry(operands[0] ?? '-', terminal);
    if (!inquiry.ok) return inquiry;
    const priceList = textOption(options, 'priceList');
    const priced = priceList === undefined ? {} : { offer: { priceList } };
    const range = await openRange(options, { ...priced, inquiry: inquiry.value }, terminal);
    if (!range.ok) return range;
    const { solve } = await import('@flangewise/constraints');
    const answer = solve(inquiry.value, range.value.bench, { most: most.value });
    const notes = [...range.value.notes, ...(await mediumNotes(mediaOf(inquiry.value)))];
    const take = textOption(options, 'take');
    if (take !== undefined) {
      const system = taken(answer.candidates, take);
      if (!system.ok) return system;
      const document = { ...system.value, ...priced };
      return succeed({
        exit: exitCodes.done,
        told: { document, words: () => JSON.stringify(document, null, 2) },
        notes: [...notes, ...openPointsNote(answer.openPoints)],
      });
    }
    const currency =
      range.value.bench.range.prices === undefined ? undefined : range.value.priceList?.currency;
    return succeed({
      exit: exitOf(answer),
      told: {
        document: answer,
        words: (columns) => solveText({ title: inquiry.value.title, answer, currency }, columns),
      },
      notes,
    });
  },
};
