import { succeed } from '@flangewise/model';
import type { Answer } from '../command.js';
import { exitCodes } from '../exit-code.js';
import { table } from '../text/table.js';
import type { OrRefusal } from '../trouble.js';

/** Every calculation: id, title, JSON Schema of inputs and outputs, source. */
export const listCalculations = async (): Promise<OrRefusal<Answer>> => {
  const { calculations, describeCalculation, fieldTable } = await import('@flangewise/engineering');
  const sorted = calculations.toSorted((a, b) => a.id.localeCompare(b.id, 'en'));
  const words = (columns: number): string =>
    table(
      [{ title: 'Calculation' }, { title: 'Inputs', align: 'right' }, { title: 'Title' }],
      sorted.map((c) => [c.id, String(fieldTable(c.inputs).length), c.title]),
      columns,
    );
  return succeed({
    exit: exitCodes.done,
    told: { document: sorted.map(describeCalculation), words },
    notes: [`${String(sorted.length)} calculations; their fields with --json`],
  });
};
