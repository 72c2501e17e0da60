import type { Calculation } from '@flangewise/engineering';
import {
  type CalculationError,
  type CalculationErrorCode,
  type Evidence,
  nearestName,
  readDocument,
  succeed,
} from '@flangewise/model';
import { type Answer, type Request, textOption } from '../command.js';
import { type ExitCode, exitCodes } from '../exit-code.js';
import { readJson } from '../input/read-json.js';
import { evidenceText } from '../text/evidence-text.js';
import { invalidFields, type OrRefusal, refuse, type Trouble } from '../trouble.js';

/** Whether the inputs are to blame, or the tables and the method. */
const exitOf: Readonly<Record<CalculationErrorCode, ExitCode>> = {
  CALC_INVALID_INPUT: exitCodes.badInput,
  CALC_OUT_OF_RANGE: exitCodes.badInput,
  CALC_UNKNOWN_CALCULATION: exitCodes.badInput,
  CALC_UNKNOWN_SUBSTANCE: exitCodes.badInput,
  CALC_UNKNOWN_MATERIAL: exitCodes.badInput,
  CALC_MISSING_PROPERTY: exitCodes.notValid,
  CALC_NOT_CONVERGED: exitCodes.notValid,
};

const troubleOf = ({ code, message, field, given, allowed }: CalculationError): Trouble => ({
  code,
  ...(field === undefined ? {} : { path: field }),
  ...(given === undefined ? {} : { given: String(given) }),
  message: allowed === undefined || message.includes(allowed) ? message : `${message} (allowed: ${allowed})`,
});

const unknownCalculation = (id: string, known: readonly string[]): ReturnType<typeof refuse> => {
  const meant = nearestName(id, known);
  return refuse({
    code: 'CALC_UNKNOWN_CALCULATION',
    path: 'calculation',
    given: id,
    message: `there is no such calculation; ${meant === undefined ? '' : `was ${meant} meant? `}"calc list" names all ${String(known.length)}`,
  });
};

const findCalculation = async (id: string): Promise<OrRefusal<Calculation>> => {
  const { calculations } = await import('@flangewise/engineering');
  const found = calculations.find((c) => c.id === id);
  return found === undefined
    ? unknownCalculation(
        id,
        calculations.map((c) => c.id),
      )
    : succeed(found);
};

/** Finds and evaluates a calculation on inputs that nobody has checked yet. */
export const calculate = async (id: string, inputs: unknown): Promise<OrRefusal<Evidence>> => {
  const { evaluateWithEvidence } = await import('@flangewise/engineering');
  const found = await findCalculation(id);
  if (!found.ok) return found;
  const subject = found.value;
  const read = readDocument(subject.inputs, inputs);
  if (!read.ok) return refuse(...invalidFields(read.error));
  const outcome = evaluateWithEvidence(subject, inputs as never);
  if (outcome.ok) return outcome;
  return { ok: false, error: { exit: exitOf[outcome.error.code], troubles: [troubleOf(outcome.error)] } };
};

/** One calculation: outputs, steps, source. */
export const runCalculation = async (id: string, request: Request): Promise<OrRefusal<Answer>> => {
  const found = await findCalculation(id);
  if (!found.ok) return found;
  const input = textOption(request.options, 'input');
  if (input === undefined) {
    return refuse({
      code: 'USAGE',
      path: '--input',
      message: `give the inputs of ${id} as JSON: --input FILE, or --input - for standard input`,
    });
  }
  const inputs = await readJson(input, request.terminal);
  if (!inputs.ok) return inputs;
  const result = await calculate(id, inputs.value);
  if (!result.ok) return result;
  const { outputs, steps, source } = result.value;
  return succeed({
    exit: exitCodes.done,
    told: {
      document: { outputs, steps, source },
      words: (columns) => evidenceText(result.value, columns),
    },
  });
};
