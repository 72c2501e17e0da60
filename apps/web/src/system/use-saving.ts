import type { SystemInput } from '@flangewise/model';
import { useCallback, useEffect, useRef, useState } from 'react';
import { isOffline } from '../api/api-error';
import { api } from '../api/client';
import { errorText } from '../api/api-error';
import { forget, keep } from './kept-changes';
import { type Theirs, theirsOf } from './theirs';

export type SaveState =
  | { readonly kind: 'saved'; readonly at: Date }
  | { readonly kind: 'unsaved' }
  | { readonly kind: 'saving' }
  | { readonly kind: 'offline'; readonly since: Date; readonly changes: number }
  | { readonly kind: 'other'; readonly theirs: Theirs }
  | { readonly kind: 'refused'; readonly message: string };

/** Saves once choosing rests. */
const restMs = 700;
/** Tries again while the line is down. */
const retryMs = 5000;

export interface SavingInput {
  readonly id: string;
  readonly document: SystemInput;
  /** Number of steps so far: each change counts. */
  readonly steps: number;
  /** As the server has it. */
  readonly saved: { readonly document: SystemInput; readonly version: number; readonly at: Date };
  /** People who may not save keep their changes on this page. */
  readonly maySave: boolean;
}

/** A change was made that is not on its way yet. */
const unsaved: SaveState = { kind: 'unsaved' };

const textOf = (document: SystemInput): string => JSON.stringify(document);

/** Keeps the document saved, with the version that was seen; says how that stands. */
export function useSaving({ id, document, steps, saved, maySave }: SavingInput) {
  const [state, setState] = useState<SaveState>({ kind: 'saved', at: saved.at });
  const known = useRef({ text: textOf(saved.document), version: saved.version, steps });
  const busy = useRef(false);
  const latest = useRef({ document, steps });
  latest.current = { document, steps };

  const save = useCallback(async (): Promise<void> => {
    if (busy.current || !maySave) return;
    const { document: sent, steps: sentSteps } = latest.current;
    const text = textOf(sent);
    if (text === known.current.text) return;
    busy.current = true;
    setState((before) => (before.kind === 'offline' ? before : { kind: 'saving' }));
    try {
      const { version } = await api.systems.save.mutate({
        id,
        document: sent,
        version: known.current.version,
      });
      known.current = { text, version, steps: sentSteps };
      forget(id);
      setState({ kind: 'saved', at: new Date() });
    } catch (error) {
      const theirs = theirsOf(error);
      const changes = Math.max(1, latest.current.steps - known.current.steps);
      if (theirs !== undefined) setState({ kind: 'other', theirs });
      else if (isOffline(error))
        setState((before) =>
          before.kind === 'offline'
            ? { ...before, changes }
            : { kind: 'offline', since: new Date(), changes },
        );
      else setState({ kind: 'refused', message: errorText(error) });
    } finally {
      busy.current = false;
    }
    if (textOf(latest.current.document) !== text) await save();
  }, [id, maySave]);

  useEffect(() => {
    if (!maySave) return;
    if (textOf(document) === known.current.text) {
      forget(id);
      return;
    }
    keep(id, {
      document,
      version: known.current.version,
      changes: Math.max(1, steps - known.current.steps),
      since: new Date().toISOString(),
    });
    const timer = setTimeout(() => void save(), restMs);
    return () => clearTimeout(timer);
  }, [id, document, steps, save, maySave]);

  useEffect(() => {
    if (state.kind !== 'offline') return;
    const again = (): void => void save();
    const timer = setInterval(again, retryMs);
    addEventListener('online', again);
    return () => {
      clearInterval(timer);
      removeEventListener('online', again);
    };
  }, [state.kind, save]);

  /** Answers to somebody else's change. */
  const keepMine = useCallback(
    (theirs: Theirs): void => {
      known.current = { ...known.current, text: textOf(theirs.document), version: theirs.version };
      void save();
    },
    [save],
  );
  const takeTheirs = useCallback((theirs: Theirs): void => {
    known.current = { ...known.current, text: textOf(theirs.document), version: theirs.version };
    setState({ kind: 'saved', at: new Date() });
  }, []);

  const isBehind = maySave && state.kind === 'saved' && textOf(document) !== known.current.text;
  return { state: isBehind ? unsaved : state, save, keepMine, takeTheirs };
}
