import {
  assess,
  type Bench,
  benchOf,
  cheapest,
  createBench,
  drawingFactsOf,
  explain,
  fillSystem,
  nameSources,
  narrow,
  type Range,
  rangeOf,
  ruleBook,
  slotVariables,
} from '@flangewise/constraints';
import {
  fail,
  type InputTrouble,
  type Outcome,
  parseSlotPath,
  readDocument,
  type SlotPath,
  succeed,
  type System,
  type SystemInput,
  systemSchema,
} from '@flangewise/model';
import { billOfMaterials, deliveryDaysOf, deliveryOf } from '@flangewise/quotation';
import { withChoice } from '../system/edit-system';
import type { Asks, AskKind, Commercial, SlotOption, Stock } from './protocol';

type Read<T> = Outcome<T, readonly InputTrouble[]>;

interface Reading {
  readonly system: System;
  readonly bench: Bench;
}

const nothing: Commercial = { listPrice: null, days: 0, weeks: 0, chain: [] };

/** How often a part in this slot is delivered: once on the frame, else as often as its set counts. */
const quantityAt = (system: System, path: SlotPath): number => {
  const set = parseSlotPath(path)?.set;
  return set === undefined ? 1 : (system.sets[set]?.count ?? 1);
};

const chosenAt = (system: System, path: SlotPath): string | null | undefined => {
  const parsed = parseSlotPath(path);
  if (parsed === undefined) return undefined;
  return parsed.set === undefined ? system.frame[parsed.slot] : system.sets[parsed.set]?.choices[parsed.slot];
};

/** What an option costs more than what is chosen; null where the person sees no prices. */
const priceDifference = (
  { prices }: Range,
  asked: {
    readonly chosen: string | null | undefined;
    readonly option: string | null;
    readonly quantity: number;
  },
): number | null => {
  if (prices === undefined) return null;
  const priceOf = (id: string | null | undefined): number =>
    typeof id === 'string' ? (prices.get(id) ?? 0) : 0;
  return (priceOf(asked.option) - priceOf(asked.chosen)) * asked.quantity;
};

/** Answers everything that can be asked of a system, over one stock of items and prices. */
export class Desk {
  readonly #bench: Bench;

  constructor(stock: Stock) {
    this.#bench = createBench(
      rangeOf(
        { revision: stock.revision, items: [...stock.items] },
        {
          deliveryDays: deliveryDaysOf,
          ...(stock.prices === null ? {} : { prices: new Map(Object.entries(stock.prices)) }),
          ...(stock.specialRates === null ? {} : { specialRates: stock.specialRates }),
        },
      ),
      ruleBook,
    );
  }

  answer<K extends AskKind>(about: K, ask: Asks[K]['ask']): Read<Asks[K]['answer']> {
    const reading = this.#read(ask.document);
    if (!reading.ok) return reading;
    return succeed(this.#answers[about](reading.value, ask as never) as Asks[K]['answer']);
  }

  /** The options of a slot one by one, so that something more urgent can come between. */
  *options({ document, path, valid }: Asks['options']['ask']): Generator<undefined, Read<SlotOption[]>> {
    const reading = this.#read(document);
    if (!reading.ok) return reading;
    const { system, bench } = reading.value;
    const variable = slotVariables({ items: [...bench.range.items.values()] }, system.sets.length).find(
      (one) => one.path === path,
    );
    const chosen = chosenAt(system, path);
    const found: SlotOption[] = [];
    for (const item of variable?.options ?? []) {
      const id = item?.id ?? null;
      found.push({
        id,
        name: item?.name ?? 'None',
        priceDifference: priceDifference(bench.range, {
          chosen,
          option: id,
          quantity: quantityAt(system, path),
        }),
        effect: valid.includes(id) ? this.#effect(withChoice(document, path, id), bench) : undefined,
      });
      yield;
    }
    return succeed(found);
  }

  readonly #answers: {
    readonly [K in AskKind]: (reading: Reading, ask: Asks[K]['ask']) => Asks[K]['answer'];
  } = {
    view: ({ system, bench }) => {
      const assessment = assess(system, bench);
      return {
        assessment,
        commercial: this.#commercial(system, bench),
        drawing: drawingFactsOf(system, bench.range, assessment),
        specials: this.#specialNames(bench),
      };
    },
    narrow: ({ system, bench }) => narrow(system, bench),
    options: (_, ask) => {
      const work = this.options(ask);
      for (;;) {
        const step = work.next();
        if (step.done === true) return step.value.ok ? step.value.value : [];
      }
    },
    object: ({ system, bench }, { document, path, option }) => {
      const other = this.#read(withChoice(document, path, option));
      if (!other.ok) return { reasons: other.error.map(({ message }) => message) };
      const failing = new Set(
        assess(system, bench)
          .results.filter(({ status }) => status === 'not met')
          .map(({ rule, set }) => `${rule} ${String(set)}`),
      );
      const results = assess(other.value.system, other.value.bench).results.filter(
        ({ kind, status }) => kind === 'hard' && status === 'not met',
      );
      const fresh = results.filter(({ rule, set }) => !failing.has(`${rule} ${String(set)}`));
      const told = (fresh.length > 0 ? fresh : results).map(({ text }) => text);
      if (told.length > 0) return { reasons: [...new Set(told)] };
      const { conflicts } = explain(other.value.system, other.value.bench, { most: 1 });
      return { reasons: conflicts.map(({ text }) => text) };
    },
    mend: (_, { document, path, option }) => {
      const other = this.#read(withChoice(document, path, option));
      if (!other.ok) return { conflicts: [], repairs: [] };
      const { conflicts, repairs } = explain(other.value.system, other.value.bench, { most: 2 });
      return {
        conflicts,
        repairs: repairs.filter(({ changes }) => changes.every((change) => change.path !== path)),
      };
    },
    explain: ({ system, bench }) => explain(system, bench),
    complete: ({ system, bench }, { document }) => {
      const filled = cheapest(system, bench);
      return filled === undefined ? undefined : fillSystem(document, filled.variables, filled.solution);
    },
    prove: ({ system, bench }) => nameSources(assess(system, bench, { withEvidence: true })),
  };

  #read(document: SystemInput): Read<Reading> {
    const outcome = readDocument(systemSchema, document);
    return outcome.ok
      ? succeed({ system: outcome.value, bench: benchOf(outcome.value, this.#bench) })
      : fail(outcome.error);
  }

  #specialNames({ range }: Bench): Readonly<Record<string, string>> {
    const { items } = this.#bench.range;
    return Object.fromEntries(
      [...range.items.values()].filter(({ id }) => !items.has(id)).map(({ id, name }) => [id, name]),
    );
  }

  #commercial(system: System, bench: Bench): Commercial {
    const { items, prices } = bench.range;
    const bill = billOfMaterials({ system, catalogue: { items: [...items.values()] } });
    if (!bill.ok) return nothing;
    const { chain, days, weeks } = deliveryOf(bill.value);
    const amounts = bill.value.map(({ item, quantity }) => quantity * (prices?.get(item.id) ?? Number.NaN));
    const listPrice = amounts.reduce((sum, amount) => sum + amount, 0);
    return { listPrice: Number.isNaN(listPrice) ? null : listPrice, days, weeks, chain };
  }

  #effect(document: SystemInput, bench: Bench): SlotOption['effect'] {
    const reading = this.#read(document);
    if (!reading.ok) return undefined;
    const { status, leastMargin } = assess(reading.value.system, bench);
    return { status, leastMargin, days: this.#commercial(reading.value.system, bench).days };
  }
}
