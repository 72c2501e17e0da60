import { type FieldLine, fieldTable } from './field-table.js';
import { calculations } from './registry.js';

/** What a calculation of the registry takes, for readers of its evidence; empty where there is no such calculation. */
export const inputFieldsOf = (id: string): readonly FieldLine[] => {
  const subject = calculations.find((one) => one.id === id);
  return subject === undefined ? [] : fieldTable(subject.inputs);
};
