import { type Command, textOption } from '../command.js';
import { refuse } from '../trouble.js';
import { runBatch } from './calc-batch.js';
import { listCalculations } from './calc-list.js';
import { runCalculation } from './calc-one.js';

export const calcCommand: Command = {
  usage: 'calc [id]',
  summary: 'engineering calculations: list them, run one, or run a batch',
  examples: ['flangewise calc relief.gasArea --input inputs.json'],
  details: `  calc, calc list             every calculation with its inputs, outputs and source
  calc ID --input FILE        one calculation with its steps
  calc --batch FILE.jsonl     a line {id, calculation, inputs} in, a line {id, outputs} or {id, error} out;
                              done once each line is answered, with a result or an error

Pressures are gauge where the name of a field ends in PaGauge, absolute where it ends in PaAbs.`,
  options: [
    ['--input <file>', 'inputs of the calculation as JSON; - for standard input'],
    ['--batch <file>', 'many calculations, one a line; - for standard input'],
  ],
  run: async (request) => {
    const [id] = request.operands;
    const batch = textOption(request.options, 'batch');
    if (batch !== undefined) {
      return id === undefined
        ? runBatch(batch, request)
        : refuse({
            code: 'USAGE',
            path: 'calc',
            given: `${id} --batch`,
            message: 'a batch names a calculation on each line; leave the id out',
          });
    }
    return id === undefined || id === 'list' ? listCalculations() : runCalculation(id, request);
  },
};
