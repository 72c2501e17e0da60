import type { SystemInput } from '@flangewise/model';

/** Changes that did not reach the server yet, kept on this computer. */
export interface KeptChanges {
  readonly document: SystemInput;
  /** The version on which they were made. */
  readonly version: number;
  readonly changes: number;
  readonly since: string;
}

const keyOf = (id: string): string => `flangewise.system.${id}`;

export const readKept = (id: string): KeptChanges | undefined => {
  try {
    const stored = localStorage.getItem(keyOf(id));
    return stored === null ? undefined : (JSON.parse(stored) as KeptChanges);
  } catch {
    return undefined;
  }
};

export function keep(id: string, changes: KeptChanges): void {
  try {
    localStorage.setItem(keyOf(id), JSON.stringify(changes));
  } catch {
    // A full or closed store costs the changes after a reload only.
  }
}

export function forget(id: string): void {
  localStorage.removeItem(keyOf(id));
}
