import { Desk } from './desk';
import type { Asks, FromWorker, ToWorker } from './protocol';

// The engine in a thread of its own, so that a page never waits for it. Questions are answered in their order; the
// options of a slot give way to whatever is asked meanwhile.

let desk: Desk | undefined;
const waiting: Extract<ToWorker, { kind: 'ask' }>[] = [];
let busy = false;

const send = (message: FromWorker): void => postMessage(message);

/** Lets messages that have come in be read. */
const breathe = (): Promise<void> => {
  const { port1, port2 } = new MessageChannel();
  return new Promise((resolve) => {
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(null);
  });
};

const cancelled = new Set<number>();

async function answerOptions(id: number, ask: Asks['options']['ask'], from: Desk): Promise<void> {
  const work = from.options(ask);
  for (;;) {
    const step = work.next();
    if (step.done === true) {
      send({ id, answer: step.value });
      return;
    }
    await breathe();
    if (cancelled.delete(id)) return;
    await answerAll();
  }
}

async function answer(message: Extract<ToWorker, { kind: 'ask' }>): Promise<void> {
  if (desk === undefined || cancelled.delete(message.id)) return;
  if (message.about === 'options') {
    await answerOptions(message.id, message.ask as Asks['options']['ask'], desk);
    return;
  }
  send({ id: message.id, answer: desk.answer(message.about, message.ask as never) });
  await breathe();
}

async function answerAll(): Promise<void> {
  for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
    try {
      await answer(next);
    } catch (error) {
      send({ id: next.id, fault: error instanceof Error ? error.message : String(error) });
    }
  }
}

async function work(): Promise<void> {
  if (busy) return;
  busy = true;
  await answerAll();
  busy = false;
}

addEventListener('message', (event: MessageEvent<ToWorker>) => {
  const message = event.data;
  switch (message.kind) {
    case 'stock':
      desk = new Desk(message.stock);
      return;
    case 'cancel': {
      const index = waiting.findIndex(({ id }) => id === message.id);
      if (index >= 0) waiting.splice(index, 1);
      else cancelled.add(message.id);
      return;
    }
    case 'ask':
      waiting.push(message);
      void work();
  }
});
