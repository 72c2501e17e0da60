import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

export const checkout = fileURLToPath(new URL('../../', import.meta.url));

/** Runs a command in the checkout with its output shown. Returns its exit code; 1 when a signal ended it or it did not start. */
export function runCommand(command: string, args: readonly string[]): Promise<number> {
  const child = spawn(command, args, {
    cwd: checkout,
    stdio: ['ignore', 'inherit', 'inherit'],
    env: { ...process.env, NX_DAEMON: 'false', NEXT_TELEMETRY_DISABLED: '1' },
  });
  return new Promise((resolve) => {
    child.once('error', (error) => {
      console.error(error.message);
      resolve(1);
    });
    child.once('exit', (code) => resolve(code ?? 1));
  });
}
