import { calculations, evaluateWithEvidence } from '@flangewise/engineering';
import { type CalculationError, type Evidence, type InputTrouble, readDocument } from '@flangewise/model';
import type { FieldProblem } from '../errors/answer.js';
import { refuse } from '../errors/refusal.js';

const fieldOf = ({ field, given, message, allowed }: CalculationError): FieldProblem => ({
  field: field === undefined ? 'inputs' : `inputs.${field}`,
  problem: allowed === undefined ? message : `allowed is ${allowed}`,
  ...(given === undefined ? {} : { given: String(given) }),
});

const inputField = ({ path, given, message }: InputTrouble): FieldProblem => ({
  field: path === '' ? 'inputs' : `inputs.${path}`,
  given,
  problem: message,
});

/** One calculation with every step; refused with the field, what was given and what is allowed. */
export function runCalculation(id: string, inputs: Readonly<Record<string, unknown>>): Evidence {
  const calculation = calculations.find((one) => one.id === id);
  if (calculation === undefined) throw refuse('NOT_FOUND', { what: 'calculation', field: 'id', given: id });
  const outcome = evaluateWithEvidence(calculation, inputs);
  if (outcome.ok) return outcome.value;
  const { code, message } = outcome.error;
  const read = readDocument(calculation.inputs, inputs);
  const fields = read.ok ? [fieldOf(outcome.error)] : read.error.map(inputField);
  const problem = read.ok ? message : fields.map((one) => `${one.field}: ${one.problem}`).join('; ');
  throw refuse('CALCULATION_NOT_POSSIBLE', { problem }, { fields, details: { code } });
}
