import type { SystemInput } from '@flangewise/model';
import { useCallback, useReducer, useRef, useState } from 'react';
import type { Outputs } from '../api/client';
import { advance, begin } from './history';
import { readKept } from './kept-changes';
import { useSaving } from './use-saving';

type SystemRecord = Outputs['systems']['get'];

/** A system of an inquiry as it is opened: saved, or a candidate that nobody has saved yet. */
export type OpenedSystem = Pick<SystemRecord, 'name' | 'document' | 'version' | 'updatedAt' | 'revisions'> & {
  /** Undefined for a candidate. */
  readonly id: string | undefined;
};

/** The document of the workspace: changed, taken back, kept saved. */
export function useSystem(system: OpenedSystem, maySave: boolean) {
  const id = system.id ?? '';
  const [kept] = useState(() => (maySave ? readKept(id) : undefined));
  const [history, step] = useReducer(advance, kept?.document ?? system.document, begin);
  const steps = useRef(kept?.changes ?? 0);
  const { present: document } = history;

  const change = useCallback((next: SystemInput): void => {
    steps.current += 1;
    step({ kind: 'change', document: next });
  }, []);
  const undo = useCallback((): void => {
    steps.current += 1;
    step({ kind: 'undo' });
  }, []);
  const redo = useCallback((): void => {
    steps.current += 1;
    step({ kind: 'redo' });
  }, []);

  const saving = useSaving({
    id,
    document,
    steps: steps.current,
    saved: {
      document: system.document,
      version: kept?.version ?? system.version,
      at: new Date(system.updatedAt),
    },
    maySave,
  });
  const replace = useCallback((next: SystemInput): void => step({ kind: 'replace', document: next }), []);

  return {
    document,
    change,
    undo: history.past.length === 0 ? undefined : undo,
    redo: history.future.length === 0 ? undefined : redo,
    replace,
    saving,
  };
}
