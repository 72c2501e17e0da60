import type { NarrowAnswer, SystemInput } from '@flangewise/model';
import { useEffect, useState } from 'react';
import { type EngineClient, Withdrawn } from '../engine/engine-client';
import type { SystemView } from '../engine/protocol';

/** What the engine says of a document; of an earlier one while it works on the present one. */
export interface Verdict {
  readonly view: SystemView | undefined;
  readonly narrowed: NarrowAnswer | undefined;
  /** Whether both are about the present document. */
  readonly isCurrent: boolean;
  readonly fault: string | undefined;
}

interface Known {
  readonly document: SystemInput | undefined;
  readonly view: SystemView | undefined;
  readonly narrowed: NarrowAnswer | undefined;
  readonly fault: string | undefined;
}

const unknown: Known = { document: undefined, view: undefined, narrowed: undefined, fault: undefined };

/** Name of the measure that the browser keeps from a change to the narrowed options of every slot. */
export const narrowMeasure = 'flangewise.narrowed';

/** Proves and narrows a document in the engine; a newer document withdraws the question about an older one. */
export function useView(client: EngineClient | undefined, document: SystemInput | undefined): Verdict {
  const [known, setKnown] = useState<Known>(unknown);

  useEffect(() => {
    if (client === undefined || document === undefined) return;
    const withdraw = new AbortController();
    const began = performance.now();
    const run = async (): Promise<void> => {
      const [view, narrowed] = await Promise.all([
        client.ask('view', { document }, withdraw.signal).then((answer) => {
          // The first view shows while the tables for narrowing are still built; a later one comes with what fits, at once.
          if (answer.ok)
            setKnown((before) => (before.view === undefined ? { ...before, view: answer.value } : before));
          return answer;
        }),
        client.ask('narrow', { document }, withdraw.signal),
      ]);
      if (view.ok && narrowed.ok) {
        setKnown({ document, view: view.value, narrowed: narrowed.value, fault: undefined });
        performance.measure(narrowMeasure, { start: began, end: performance.now() });
      } else {
        const troubles = view.ok ? (narrowed.ok ? [] : narrowed.error) : view.error;
        setKnown((before) => ({
          ...before,
          document,
          fault: troubles.map(({ path, message }) => `${path}: ${message}`).join(' '),
        }));
      }
    };
    run().catch((error: unknown) => {
      if (error instanceof Withdrawn) return;
      setKnown((before) => ({ ...before, document, fault: String(error) }));
    });
    return () => withdraw.abort();
  }, [client, document]);

  return { ...known, isCurrent: known.document === document };
}

/** Asks the engine something that hangs on a document and a little more; undefined until the answer is there. */
export function useAnswer<T>(
  key: string,
  ask: (signal: AbortSignal) => Promise<T> | undefined,
): T | undefined {
  const [answer, setAnswer] = useState<{ readonly key: string; readonly value: T }>();
  useEffect(() => {
    const withdraw = new AbortController();
    ask(withdraw.signal)
      ?.then((value) => setAnswer({ key, value }))
      .catch((error: unknown) => {
        if (!(error instanceof Withdrawn)) throw error;
      });
    return () => withdraw.abort();
    // The key names everything that the question hangs on.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [key]);
  return answer?.key === key ? answer.value : undefined;
}
