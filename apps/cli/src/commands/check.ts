import { type Assessment, succeed } from '@flangewise/model';
import type { Answer, Command } from '../command.js';
import { exitCodes } from '../exit-code.js';
import { readSystem } from '../input/read-system.js';
import { assessReleased, releaseNotes } from '../input/released.js';
import { checkText } from '../text/check-text.js';

/** A whole is valid once everything is chosen and no hard rule is broken; what is not decidable only keeps it from release. */
const exitOf = ({ status, undecided }: Assessment): Answer['exit'] =>
  status === 'not met' || undecided.length > 0 ? exitCodes.notValid : exitCodes.done;

export const checkCommand: Command = {
  usage: 'check <system>',
  summary: 'the assessment of a whole system: every rule with demand, limit and margin',
  examples: ['flangewise check system.json'],
  details: 'Ends with 1 while a rule is not met or a slot is not chosen.',
  options: [['--evidence', 'also the steps of every calculation']],
  run: async (request) => {
    const read = await readSystem(request);
    if (!read.ok) return read;
    const { system, title, notes } = read.value;
    const withEvidence = request.options['evidence'] === true;
    const released = await assessReleased(read.value, withEvidence);
    const { assessment } = released;
    return succeed({
      exit: exitOf(assessment),
      told: {
        document: assessment,
        words: (columns) =>
          checkText(
            {
              title,
              assessment,
              several: system.sets.length > 1,
              withEvidence,
            },
            columns,
          ),
      },
      notes: [...notes, ...releaseNotes(released)],
    });
  },
};
