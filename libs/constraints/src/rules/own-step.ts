import type { SourceReference, Step } from '@flangewise/model';
import type { Proof } from '../figure.js';

interface OwnStep {
  readonly calculation: string;
  readonly title: string;
  readonly inputs: Readonly<Record<string, unknown>>;
  readonly step: Step;
  readonly source: readonly SourceReference[];
  readonly range: string;
}

/** Evidence of a value that a rule looks up or works out in one line, for the same sheet as the calculations. */
export const proveStep = (proof: Proof | undefined, { step, source, ...head }: OwnStep): void =>
  proof?.({ ...head, outputs: { [step.symbol]: step.value }, steps: [step], source: [...source] });
