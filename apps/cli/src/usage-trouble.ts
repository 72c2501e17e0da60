import { nearestName } from '@flangewise/model';
import type { CommanderError } from 'commander';
import type { Command } from './command.js';
import type { Trouble } from './trouble.js';

type Flags = readonly (readonly [flags: string, meaning: string])[];

/** Options that every command takes. */
export const sharedOptions: Flags = [
  ['--json', 'answer as JSON on standard output'],
  ['--catalogue <file>', 'a catalogue to be used instead of the demo range'],
];

const firstWord = (text: string): string => text.split(' ')[0] ?? '';

const notThere = (what: string, given: string, known: readonly string[]): string => {
  const meant = nearestName(given, known);
  return `there is no such ${what}; ${meant === undefined ? '' : `was ${meant} meant? `}there are ${known.join(', ')}`;
};

/**
 * What is wrong with a line that cannot be read, from what its parser found; undefined where that was only asked for help.
 *
 * @param line words of the command line
 */
export const usageTrouble = (
  { code, message }: Pick<CommanderError, 'code' | 'message'>,
  line: readonly string[],
  commands: readonly Command[],
): Trouble | undefined => {
  const given = /'([^']*)'/.exec(message)?.[1] ?? '';
  const command = commands.find(({ usage }) => line.includes(firstWord(usage)));
  const example = command?.examples[0] ?? '';
  const of = command === undefined ? {} : { path: firstWord(command.usage) };
  const all = [...(command?.options ?? []), ...sharedOptions].map(([flags]) => flags);
  switch (code) {
    case 'commander.unknownCommand':
      return {
        code: 'USAGE',
        given,
        message: notThere(
          'command',
          given,
          commands.map(({ usage }) => firstWord(usage)),
        ),
      };
    case 'commander.unknownOption':
      return { code: 'USAGE', ...of, given, message: notThere('option', given, all.map(firstWord)) };
    case 'commander.missingArgument':
      return { code: 'USAGE', ...of, message: `<${given}> is missing; for instance: ${example}` };
    case 'commander.optionMissingArgument':
      return { code: 'USAGE', ...of, message: `give what belongs behind the option: ${given}` };
    case 'commander.excessArguments':
      return { code: 'USAGE', ...of, message: `too many words; for instance: ${example}` };
    default:
      return undefined;
  }
};
