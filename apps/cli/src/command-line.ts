import { Command as Program, CommanderError } from 'commander';
import packageFile from '../package.json' with { type: 'json' };
import type { Answer, Command, Options } from './command.js';
import { type ExitCode, exitCodes } from './exit-code.js';
import type { Terminal } from './terminal.js';
import { plain } from './text/plain.js';
import { troubleText } from './text/trouble-text.js';
import { type OrRefusal, refuse, type Refusal } from './trouble.js';
import { sharedOptions, usageTrouble } from './usage-trouble.js';

const closingOf = (commands: readonly Command[]): string => `
Documents are JSON, read from a file or from standard input (-).
Exit code: 0 done, 1 not valid (the answer says why), 2 bad input, 3 fault.

Examples:
${commands.flatMap(({ examples }) => examples.map((line) => `  ${line}`)).join('\n')}`;

const shared = (program: Program): Program => {
  for (const [flags, meaning] of sharedOptions) program.option(flags, meaning);
  return program;
};

const asJson = (document: unknown): string => `${JSON.stringify(document, null, 2)}\n`;

const tellRefusal = async (
  { exit, troubles }: Refusal,
  options: Options,
  terminal: Terminal,
): Promise<ExitCode> => {
  if (options['json'] === true) await terminal.out(asJson({ error: { code: troubles[0]?.code, troubles } }));
  for (const trouble of troubles) terminal.say(troubleText(trouble));
  return exit;
};

const tellAnswer = async (
  { told, notes = [], exit }: Answer,
  options: Options,
  terminal: Terminal,
): Promise<ExitCode> => {
  if (told !== undefined)
    await terminal.out(
      options['json'] === true ? asJson(told.document) : `${plain(told.words(terminal.columns))}\n`,
    );
  for (const note of notes) terminal.say(plain(note));
  return exit;
};

const tell = (reply: OrRefusal<Answer>, options: Options, terminal: Terminal): Promise<ExitCode> =>
  reply.ok ? tellAnswer(reply.value, options, terminal) : tellRefusal(reply.error, options, terminal);

/** Writes of the parser cannot be awaited; they are kept and written when it is done. */
interface Printed {
  out: string;
  say: string;
}

const programOf = (
  commands: readonly Command[],
  printed: Printed,
  run: (c: Command, ran: Program) => Promise<void>,
): Program => {
  const program = shared(new Program('flangewise'))
    .description(
      'From an inquiry for a stirred pressure reactor to systems that fit, their proof, and the offer.',
    )
    .version(packageFile.version)
    .helpOption('-h, --help', 'show this help')
    .helpCommand('help [command]', 'show the help of a command')
    .addHelpText('after', closingOf(commands))
    .exitOverride()
    .configureOutput({
      writeOut: (text) => {
        printed.out += text;
      },
      writeErr: (text) => {
        printed.say += text;
      },
      getOutHelpWidth: () => 100,
    });
  for (const command of commands) {
    const sub = shared(program.command(command.usage).description(command.summary));
    for (const [flags, meaning] of command.options ?? []) sub.option(flags, meaning);
    if (command.details !== undefined) sub.addHelpText('after', `\n${command.details}`);
    sub.action(() => run(command, sub));
  }
  return program;
};

/**
 * Runs the command line.
 * @returns the exit code: the answer's, 2 where the line cannot be read; faults are thrown
 */
export const runCommandLine = async (
  argv: readonly string[],
  commands: readonly Command[],
  terminal: Terminal,
): Promise<ExitCode> => {
  const printed: Printed = { out: '', say: '' };
  let exit: ExitCode = exitCodes.done;
  const program = programOf(commands, printed, async (command, ran) => {
    const options = ran.optsWithGlobals<Options>();
    exit = await tell(await command.run({ operands: ran.args, options, terminal }), options, terminal);
  });
  try {
    await program.parseAsync([...argv], { from: 'user' });
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error;
    const trouble = usageTrouble(error, argv, commands);
    if (trouble !== undefined)
      return tellRefusal(refuse(trouble).error, { json: argv.includes('--json') }, terminal);
    exit = error.exitCode === 0 ? exitCodes.done : exitCodes.badInput;
  }
  if (printed.out !== '') await terminal.out(printed.out);
  if (printed.say !== '') terminal.say(printed.say.trimEnd());
  return exit;
};
