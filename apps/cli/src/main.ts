import { commands } from './command-table.js';
import { runCommandLine } from './command-line.js';
import { exitCodes } from './exit-code.js';
import { processTerminal } from './process-terminal.js';

/** Whoever reads the output may stop early, as `head` does; that is no fault. */
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit(exitCodes.done);
});

try {
  process.exitCode = await runCommandLine(process.argv.slice(2), commands, processTerminal);
} catch (error) {
  processTerminal.say(`fault: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`);
  process.exitCode = exitCodes.fault;
}
