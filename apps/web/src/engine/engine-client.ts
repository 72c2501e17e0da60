import type { Answered, AskKind, Asks, FromWorker, Stock, ToWorker } from './protocol';

/** Said when a question was withdrawn before its answer came. */
export class Withdrawn extends Error {}

interface Pending {
  readonly resolve: (answer: never) => void;
  readonly reject: (error: Error) => void;
}

/** The engine as a page sees it: questions with answers that come later. */
export class EngineClient {
  readonly #worker: Worker;
  readonly #pending = new Map<number, Pending>();
  #next = 1;

  constructor(stock: Stock) {
    this.#worker = new Worker(new URL('./engine.worker.ts', import.meta.url), { type: 'module' });
    this.#worker.addEventListener('message', ({ data }: MessageEvent<FromWorker>) => {
      const pending = this.#pending.get(data.id);
      this.#pending.delete(data.id);
      if ('fault' in data) pending?.reject(new Error(`The engine could not answer: ${data.fault}`));
      else pending?.resolve(data.answer as never);
    });
    this.#worker.addEventListener('error', (event) => {
      const error = new Error(`The engine stopped: ${event.message}`);
      for (const pending of this.#pending.values()) pending.reject(error);
      this.#pending.clear();
    });
    this.#send({ kind: 'stock', stock });
  }

  ask<K extends AskKind>(about: K, ask: Asks[K]['ask'], signal?: AbortSignal): Promise<Answered<K>> {
    const id = this.#next++;
    return new Promise<Answered<K>>((resolve, reject) => {
      this.#pending.set(id, { resolve, reject });
      signal?.addEventListener('abort', () => {
        if (!this.#pending.delete(id)) return;
        this.#send({ kind: 'cancel', id });
        reject(new Withdrawn('withdrawn'));
      });
      this.#send({ kind: 'ask', id, about, ask });
    });
  }

  #send(message: ToWorker): void {
    this.#worker.postMessage(message);
  }
}
