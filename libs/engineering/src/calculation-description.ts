import type { SourceReference } from '@flangewise/model';
import { z } from 'zod';
import type { Calculation } from './calculation.js';

/** What a caller has to know of a calculation: its fields as JSON Schema, its range and its source. */
export interface CalculationDescription {
  readonly id: string;
  readonly title: string;
  readonly inputs: object;
  readonly outputs: object;
  readonly range: string;
  readonly source: readonly SourceReference[];
}

/** Describes a calculation to callers outside: fields as JSON Schema (draft 2020-12), with unit and symbol of each. */
export const describeCalculation = (subject: Calculation): CalculationDescription => ({
  id: subject.id,
  title: subject.title,
  inputs: z.toJSONSchema(subject.inputs, { io: 'input', target: 'draft-2020-12' }),
  outputs: z.toJSONSchema(subject.outputs, { io: 'output', target: 'draft-2020-12' }),
  range: subject.range,
  source: subject.source,
});
