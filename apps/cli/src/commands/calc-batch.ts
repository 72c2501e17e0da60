import { succeed } from '@flangewise/model';
import type { Answer, Request } from '../command.js';
import { exitCodes } from '../exit-code.js';
import { parseJson } from '../input/read-json.js';
import { longestLine, readLines } from '../input/read-lines.js';
import { openInput } from '../input/read-text.js';
import { counted } from '../text/status-text.js';
import type { OrRefusal, Trouble } from '../trouble.js';
import { calculate } from './calc-one.js';

type Id = string | number | null;

type AnsweredLine =
  | { readonly id: Id; readonly outputs: Readonly<Record<string, unknown>> }
  | { readonly id: Id; readonly error: { readonly code: string; readonly message: string } };

const textOf = ({ path, message }: Trouble): string =>
  path === undefined || message.startsWith(path) ? message : `${path}: ${message}`;

const broken = (id: Id, troubles: readonly Trouble[]): AnsweredLine => ({
  id,
  error: { code: troubles[0]?.code ?? 'INPUT_INVALID', message: troubles.map(textOf).join('; ') },
});

const shape = 'a line is an object {"id": …, "calculation": "…", "inputs": {…}}';

const answerTo = async (text: string, number: number): Promise<AnsweredLine> => {
  const parsed = parseJson(text, `line ${String(number)}`);
  if (!parsed.ok)
    return broken(
      null,
      parsed.error.troubles.map((t) => ({ ...t, path: `line ${String(number)}` })),
    );
  const line = parsed.value;
  if (typeof line !== 'object' || line === null || Array.isArray(line))
    return broken(null, [{ code: 'INPUT_INVALID', path: `line ${String(number)}`, message: shape }]);
  const { id: givenId, calculation, inputs } = line as Readonly<Record<string, unknown>>;
  const id = typeof givenId === 'string' || typeof givenId === 'number' ? givenId : null;
  if (id === null)
    return broken(null, [{ code: 'INPUT_INVALID', path: 'id', message: `is a text or a number; ${shape}` }]);
  if (typeof calculation !== 'string')
    return broken(id, [
      { code: 'INPUT_INVALID', path: 'calculation', message: `is the name of a calculation; ${shape}` },
    ]);
  const result = await calculate(calculation, inputs);
  return result.ok ? { id, outputs: result.value.outputs } : broken(id, result.error.troubles);
};

/** Many calculations: answers line by line in order; a line that cannot be used gets an error line, and the next follows. */
export const runBatch = async (path: string, { terminal }: Request): Promise<OrRefusal<Answer>> => {
  const input = await openInput(path, terminal);
  if (!input.ok) return input;
  let count = 0;
  let failed = 0;
  for await (const line of readLines(input.value.chunks)) {
    count++;
    const answer =
      'tooLong' in line
        ? broken(null, [
            {
              code: 'INPUT_TOO_LARGE',
              path: `line ${String(count)}`,
              message: `a line may have at most ${String(longestLine)} letters`,
            },
          ])
        : await answerTo(line.text, count);
    if ('error' in answer) failed++;
    await terminal.out(`${JSON.stringify(answer)}\n`);
  }
  return succeed({
    // The batch is done once every line is answered, whatever the answers are.
    exit: exitCodes.done,
    notes:
      failed === 0
        ? []
        : [`${String(failed)} of ${counted(count, 'line')} without a result; the answer to each says why`],
  });
};
