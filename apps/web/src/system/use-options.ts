import type { SlotPath } from '@flangewise/model';
import type { SlotOption } from '../engine/protocol';
import type { Workbench } from './workbench';
import { useAnswer } from './use-view';

export interface SlotOptions {
  /** Those that lead to a valid whole, the cheapest first. */
  readonly fit: readonly SlotOption[];
  readonly unfit: readonly SlotOption[];
}

const byPrice = (a: SlotOption, b: SlotOption): number => (a.priceDifference ?? 0) - (b.priceDifference ?? 0);

/** The options of a slot with what each would mean for the whole; undefined until the engine has looked at them. */
export function useOptions(bench: Workbench, path: SlotPath): SlotOptions | undefined {
  const { client, document, narrowed, isCurrent } = bench;
  const valid = isCurrent ? narrowed?.slots[path]?.valid : undefined;
  const key =
    valid === undefined ? '' : `${path} ${JSON.stringify([document.frame, document.sets, document.inquiry])}`;
  const answer = useAnswer(key, (signal) =>
    valid === undefined ? undefined : client.ask('options', { document, path, valid }, signal),
  );
  if (answer === undefined || !answer.ok) return undefined;
  return {
    fit: answer.value.filter(({ effect }) => effect !== undefined).toSorted(byPrice),
    unfit: answer.value.filter(({ effect }) => effect === undefined),
  };
}
