import type { SystemInput } from '@flangewise/model';

/** A document with what it was before and what was taken back. */
export interface History {
  readonly past: readonly SystemInput[];
  readonly present: SystemInput;
  readonly future: readonly SystemInput[];
}

export type Step =
  | { readonly kind: 'change'; readonly document: SystemInput }
  | { readonly kind: 'undo' }
  | { readonly kind: 'redo' }
  /** Somebody else's document: what was done here before cannot be taken back from it. */
  | { readonly kind: 'replace'; readonly document: SystemInput };

/** Steps that can be taken back. */
const mostSteps = 200;

export const begin = (document: SystemInput): History => ({ past: [], present: document, future: [] });

export const advance = (history: History, step: Step): History => {
  const { past, present, future } = history;
  switch (step.kind) {
    case 'change':
      return { past: [...past, present].slice(-mostSteps), present: step.document, future: [] };
    case 'undo': {
      const before = past.at(-1);
      return before === undefined
        ? history
        : { past: past.slice(0, -1), present: before, future: [present, ...future] };
    }
    case 'redo': {
      const next = future[0];
      return next === undefined
        ? history
        : { past: [...past, present], present: next, future: future.slice(1) };
    }
    case 'replace':
      return begin(step.document);
  }
};
