import type { FormValues } from './form-values';

/** A proposed change of an inquiry: shown in its fields, and in nothing that is kept until somebody says so. */
export interface Trial {
  readonly values: FormValues;
  /** The change in words. */
  readonly text: string;
}

const trials = new Map<string, Trial>();

/** Lets the form of this inquiry show a change, the next time that it is opened. */
export function proposeTrial(id: string, trial: Trial): void {
  trials.set(id, trial);
}

/** The change that the form is to show; whoever comes back later finds what is stored. */
export function takeTrial(id: string): Trial | undefined {
  const trial = trials.get(id);
  trials.delete(id);
  return trial;
}
