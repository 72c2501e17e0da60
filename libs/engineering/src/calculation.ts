import { z } from 'zod';
import {
  apart,
  type CalculationError,
  type Evidence,
  fail,
  issueText,
  type Outcome,
  type SourceReference,
  type Step,
  succeed,
  valueAt,
} from '@flangewise/model';

/** Collects the steps of one evaluation. Absent when nobody asked for evidence, so the plain form stays fast. */
export type StepLog = (step: Step) => void;

/**
 * A calculation of the trade, declared once. Command line, API, evidence sheet, handbook page and
 * the reference test are all derived from this declaration.
 *
 * `inputs` and `outputs` carry unit and symbol of each field (see `quantity`). `compute` receives inputs
 * that passed the schema; it returns an outcome and never throws on odd input.
 */
export interface Calculation<I extends z.ZodObject = z.ZodObject, O extends z.ZodObject = z.ZodObject> {
  readonly id: string;
  readonly title: string;
  readonly inputs: I;
  readonly outputs: O;
  /** The method as TeX, for the handbook. */
  readonly formula: string;
  /** Over which inputs the method holds, in words; the schema and `compute` check it. */
  readonly range: string;
  readonly source: readonly SourceReference[];
  /** Declared as a method, so that calculations of every shape fit into one registry. */
  compute(inputs: z.output<I>, log?: StepLog): Outcome<z.output<O>>;
}

export const calculation = <I extends z.ZodObject, O extends z.ZodObject>(
  declaration: Calculation<I, O>,
): Calculation<I, O> => declaration;

interface QuantityMeta {
  readonly unit: string;
  readonly symbol: string;
  readonly description: string;
}

/**
 * A finite number with unit (UCUM), symbol and description. Without further bounds any finite value passes;
 * chain `.positive()`, `.min()` … on `z.number()` by passing it as `schema`.
 */
export const quantity = (meta: QuantityMeta, schema: z.ZodNumber = z.number()): z.ZodNumber =>
  schema.meta({ unit: meta.unit, symbol: meta.symbol, description: meta.description });

const describeIssue = (schema: z.ZodObject, found: z.core.$ZodIssue, inputs: unknown): CalculationError => {
  const [issue = found] = apart(found);
  const field = issue.path.join('.');
  const given = valueAt(inputs, issue.path);
  const allowed = issueText(schema, issue, inputs);
  const bound = issue.code === 'too_small' || issue.code === 'too_big';
  const shown = typeof given === 'number' || typeof given === 'string' ? given : undefined;
  const says =
    given === undefined ? 'nothing given; ' : shown === undefined ? '' : `${String(shown)} given; `;
  return {
    code: bound ? 'CALC_OUT_OF_RANGE' : 'CALC_INVALID_INPUT',
    message: `${field === '' ? 'inputs' : field}: ${says}${allowed}`,
    ...(field === '' ? {} : { field }),
    ...(shown === undefined ? {} : { given: shown }),
    allowed,
  };
};

/** Lists and objects within are looked through as well. */
const hasOnlyFiniteNumbers = (value: unknown): boolean => {
  if (typeof value === 'number') return Number.isFinite(value);
  return typeof value !== 'object' || value === null || Object.values(value).every(hasOnlyFiniteNumbers);
};

/**
 * Evaluates a calculation on unchecked inputs: schema, range, method, finite result.
 * @error CALC_INVALID_INPUT, CALC_OUT_OF_RANGE from the schema; whatever `compute` returns
 */
export const evaluate = <I extends z.ZodObject, O extends z.ZodObject>(
  subject: Calculation<I, O>,
  inputs: z.input<I>,
  log?: StepLog,
): Outcome<z.output<O>> => {
  const parsed = subject.inputs.safeParse(inputs);
  if (!parsed.success) {
    const issue = parsed.error.issues[0];
    return fail(
      issue === undefined
        ? { code: 'CALC_INVALID_INPUT', message: `inputs of ${subject.id} do not fit its schema` }
        : describeIssue(subject.inputs, issue, inputs),
    );
  }
  const outcome = subject.compute(parsed.data, log);
  if (outcome.ok && !hasOnlyFiniteNumbers(outcome.value)) {
    return fail({
      code: 'CALC_OUT_OF_RANGE',
      message: `${subject.id} has no finite result for these inputs; it holds for: ${subject.range}`,
      allowed: subject.range,
    });
  }
  return outcome;
};

/** Evaluates with evidence: the same result, and every step that led to it. */
export const evaluateWithEvidence = <I extends z.ZodObject, O extends z.ZodObject>(
  subject: Calculation<I, O>,
  inputs: z.input<I>,
): Outcome<Evidence> => {
  const steps: Step[] = [];
  const outcome = evaluate(subject, inputs, (step) => steps.push(step));
  if (!outcome.ok) return outcome;
  return succeed({
    calculation: subject.id,
    title: subject.title,
    inputs: inputs as Record<string, unknown>,
    outputs: outcome.value,
    steps,
    source: subject.source,
    range: subject.range,
  });
};
