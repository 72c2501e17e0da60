import type { FormValues } from './form-values';

const keyOf = (id: string): string => `flangewise.inquiry.${id}`;

/** What was typed and not yet saved, kept on this computer. */
export interface Draft {
  readonly values: FormValues;
  readonly at: string;
}

export const readDraft = (id: string): Draft | undefined => {
  try {
    const stored = localStorage.getItem(keyOf(id));
    return stored === null ? undefined : (JSON.parse(stored) as Draft);
  } catch {
    return undefined;
  }
};

export function keepDraft(id: string, values: FormValues): void {
  try {
    localStorage.setItem(keyOf(id), JSON.stringify({ values, at: new Date().toISOString() }));
  } catch {
    // A full or closed store costs the draft after a reload, not the work in the fields.
  }
}

export function dropDraft(id: string): void {
  localStorage.removeItem(keyOf(id));
}
