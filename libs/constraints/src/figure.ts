import type { Evidence, Outcome, Status } from '@flangewise/model';
import { type Calculation, evaluate, evaluateWithEvidence } from '@flangewise/engineering';
import type { z } from 'zod';

/** Collects the proof of a figure; absent when nobody asked for it. */
export type Proof = (evidence: Evidence) => void;

/** What a side of a comparison amounts to. */
export type Figure =
  | {
      readonly kind: 'known';
      readonly value: number;
      readonly unverified?: string;
      readonly special?: number;
    }
  /** An input or a published value is missing: fields of the inquiry, or what has to be found out. */
  | { readonly kind: 'missing'; readonly missing: readonly string[] }
  /** The rule has nothing to say about these parts under these conditions. */
  | { readonly kind: 'not applicable' };

export const known = (value: number): Figure => ({ kind: 'known', value });

/** A limit that a special may pass, up to `special`, after review and release. */
export const knownUpTo = (value: number, special: number): Figure => ({ kind: 'known', value, special });

/** A figure that rests on a value from memory or on a rough correlation: never better than met with caution. */
export const unverified = (value: number, because: string): Figure => ({
  kind: 'known',
  value,
  unverified: because,
});

export const missing = (...fields: readonly string[]): Figure => ({ kind: 'missing', missing: fields });

export const notApplicable: Figure = { kind: 'not applicable' };

/** What a rule finds about a combination of parts that is not a comparison of two numbers. */
export interface Judgement {
  readonly status: Status;
  /** One sentence that names parts and numbers; the rule's `say` where absent. */
  readonly text?: string;
  readonly demand?: number | string;
  readonly limit?: number | string;
  readonly utilisation?: number;
  readonly missing?: readonly string[];
}

export const met: Judgement = { status: 'met' };
export const caution = (text: string): Judgement => ({ status: 'met with caution', text });
export const notMet = (text: string): Judgement => ({ status: 'not met', text });
export const notDecidable = (text: string, ...fields: readonly string[]): Judgement => ({
  status: 'not decidable',
  text,
  missing: fields,
});

/** Runs a calculation, with its steps when a proof is asked for. */
export const reckon = <I extends z.ZodObject, O extends z.ZodObject>(
  calculation: Calculation<I, O>,
  inputs: z.input<I>,
  proof?: Proof,
): Outcome<z.output<O>> => {
  if (proof !== undefined) {
    const evidence = evaluateWithEvidence(calculation, inputs);
    if (evidence.ok) proof(evidence.value);
  }
  return evaluate(calculation, inputs);
};

/** The result of a calculation as a figure; trouble becomes "missing", with what has to be found out. */
export const figureOf = <T>(outcome: Outcome<T>, read: (value: T) => number): Figure =>
  outcome.ok ? known(read(outcome.value)) : missing(outcome.error.message);
