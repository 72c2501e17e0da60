import type { Item, ItemOf, OptionalSlot, SlotName, SourceReference } from '@flangewise/model';
import type { ConditionName, Conditions } from './conditions.js';
import type { Figure, Judgement, Proof } from './figure.js';
import type { PortsRule } from './ports-rule.js';

/** For each slot the attributes that a rule reads; items alike in them are one class to the rule. */
export type Reads = { readonly [K in SlotName]?: readonly (keyof ItemOf<K>)[] };

/** The parts that a rule sees: what it declared, and the name for its text. An optional slot may be empty. */
export type Parts<R extends Reads> = {
  readonly [K in keyof R & SlotName]:
    | Pick<
        ItemOf<K>,
        (R[K] extends readonly (infer A)[] ? A & keyof ItemOf<K> : never) | ('name' & keyof ItemOf<K>)
      >
    | (K extends OptionalSlot ? null : never);
};

export type RuleGroup =
  | 'volume'
  | 'strength'
  | 'closure'
  | 'material'
  | 'lifting'
  | 'stirring'
  | 'heat'
  | 'relief'
  | 'hazardous area'
  | 'protection'
  | 'accessories'
  | 'supply'
  | 'wish'
  | 'papers';

/** What every rule has, whatever its form. */
export interface RuleHead<C extends readonly ConditionName[]> {
  /** In the trade's words: `stirring.coupling-torque`. */
  readonly id: string;
  readonly title: string;
  readonly group: RuleGroup;
  /** Only a hard rule removes options; a caution or an advice informs. */
  readonly kind: 'hard' | 'caution' | 'advice';
  /** The conditions that it reads. */
  readonly conditions: C;
  readonly source: readonly SourceReference[];
}

/** How a demand is set against a limit. */
export interface Measure {
  /** UCUM code of demand and limit as they stand in results; pressures are gauge. */
  readonly unit: string;
  /**
   * `ratio`: utilisation = demand / limit. `inverse`: a least value is asked for, utilisation = demand / limit with
   * demand the asked least value and limit what the part gives. A number: a scale such as temperature, utilisation =
   * 1 − (limit − demand) / span.
   */
  readonly utilisation: 'ratio' | { readonly span: number };
  /** From which utilisation on a met check calls for care. */
  readonly cautionFrom?: number;
}

/** How a rule rounds the attributes that it does not need in full. */
export interface Rounding {
  readonly massKg?: (massKg: number) => number;
}

/** demand ≤ limit; each side reads its own parts, so that tabulation needs no cross product. */
export interface ComparisonRule<
  D extends Reads = Reads,
  L extends Reads = Reads,
  C extends readonly ConditionName[] = readonly ConditionName[],
>
  extends RuleHead<C>, Measure {
  readonly form: 'comparison';
  readonly demandOf: D;
  readonly limitOf: L;
  /** Attributes that it reads only through a rounding: parts alike after it are one class to the rule. */
  readonly rounded?: Rounding;
  demand(parts: Parts<D>, conditions: Pick<Conditions, C[number]>, proof?: Proof): Figure;
  limit(parts: Parts<L>, conditions: Pick<Conditions, C[number]>, proof?: Proof): Figure;
  say(
    shown: { demand: string; limit: string; parts: Parts<D> & Parts<L> },
    conditions: Pick<Conditions, C[number]>,
  ): string;
}

/** A judgement of a combination of parts. */
export interface JudgementRule<
  R extends Reads = Reads,
  C extends readonly ConditionName[] = readonly ConditionName[],
> extends RuleHead<C> {
  readonly form: 'judgement';
  readonly unit?: string;
  readonly of: R;
  /** undefined: nothing to say about these parts under these conditions. */
  judge(parts: Parts<R>, conditions: Pick<Conditions, C[number]>, proof?: Proof): Judgement | undefined;
  /** What "met" means, in one sentence. */
  readonly met: string;
}

type AttributeOfEvery =
  | 'wetted'
  | 'rating'
  | 'electrical'
  | 'families'
  | 'portsM'
  | 'reachM'
  | 'massKg'
  | 'life'
  | 'successor'
  | 'validUntil'
  | 'name'
  | 'slot';

/** A judgement of each part, by itself or beside a few others, over several slots. */
export interface PartRule<
  B extends Reads = Reads,
  C extends readonly ConditionName[] = readonly ConditionName[],
> extends RuleHead<C> {
  readonly form: 'part';
  readonly unit?: string;
  readonly each: readonly SlotName[];
  readonly reads: readonly AttributeOfEvery[];
  /** Other parts that it is held against, for instance the vessel. */
  readonly beside: B;
  judge(
    part: Pick<Item, AttributeOfEvery>,
    conditions: Pick<Conditions, C[number]>,
    context: { readonly beside: Parts<B>; readonly proof?: Proof | undefined },
  ): Judgement | undefined;
  readonly met: string;
}

/** A sum over parts against the limit of one part. */
export interface SumRule<
  L extends Reads = Reads,
  C extends readonly ConditionName[] = readonly ConditionName[],
>
  extends RuleHead<C>, Measure {
  readonly form: 'sum';
  /** Over the parts of one vessel (what a lift moves), or of all vessels that work at once (what the frame carries). */
  readonly over: 'one vessel' | 'vessels at once';
  readonly terms: readonly SlotName[];
  term(part: Item, conditions: Pick<Conditions, C[number]>): number;
  /** What is in a vessel without any part: the batch, say. While it is missing it removes no option. */
  constant?(conditions: Pick<Conditions, C[number]>): Figure;
  readonly limitOf: L;
  limit(parts: Parts<L>, conditions: Pick<Conditions, C[number]>): Figure;
  say(shown: { demand: string; limit: string; parts: Parts<L> }): string;
}

export type Rule = ComparisonRule | JudgementRule | PartRule | SumRule | PortsRule;

export const comparison = <
  const D extends Reads,
  const L extends Reads,
  const C extends readonly ConditionName[],
>(
  declaration: Omit<ComparisonRule<D, L, C>, 'form'>,
): ComparisonRule<D, L, C> => ({ form: 'comparison', ...declaration });

export const judgement = <const R extends Reads, const C extends readonly ConditionName[]>(
  declaration: Omit<JudgementRule<R, C>, 'form'>,
): JudgementRule<R, C> => ({ form: 'judgement', ...declaration });

export const partRule = <const B extends Reads, const C extends readonly ConditionName[]>(
  declaration: Omit<PartRule<B, C>, 'form'>,
): PartRule<B, C> => ({
  form: 'part',
  ...declaration,
});

export const sumRule = <const L extends Reads, const C extends readonly ConditionName[]>(
  declaration: Omit<SumRule<L, C>, 'form'>,
): SumRule<L, C> => ({ form: 'sum', ...declaration });
