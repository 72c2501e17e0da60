import { calculations, evaluateWithEvidence } from '@flangewise/engineering';
import type { Evidence } from '@flangewise/model';
import { refuse } from '../errors/refusal.js';

/** One calculation with every step; refused with the field, what was given and what is allowed. */
export function runCalculation(id: string, inputs: Readonly<Record<string, unknown>>): Evidence {
  const calculation = calculations.find((one) => one.id === id);
  if (calculation === undefined) throw refuse('NOT_FOUND', { what: 'calculation', field: 'id', given: id });
  const outcome = evaluateWithEvidence(calculation, inputs);
  if (outcome.ok) return outcome.value;
  const { code, message, field, given, allowed } = outcome.error;
  throw refuse(
    'CALCULATION_NOT_POSSIBLE',
    { problem: message },
    {
      fields: [
        {
          field: field === undefined ? 'inputs' : `inputs.${field}`,
          problem: allowed === undefined ? message : `allowed is ${allowed}`,
          ...(given === undefined ? {} : { given: String(given) }),
        },
      ],
      details: { code },
    },
  );
}
