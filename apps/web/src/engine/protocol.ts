import type { DrawingFacts } from '@flangewise/constraints';
import type {
  Assessment,
  ExplainAnswer,
  InputTrouble,
  Item,
  LeastMargin,
  NarrowAnswer,
  Outcome,
  SlotPath,
  SpecialRates,
  Status,
  SystemInput,
} from '@flangewise/model';
import type { DeliveryStep } from '@flangewise/quotation';

/** What the engine works on: the range, and list prices where the person may see them. */
export interface Stock {
  readonly revision: string;
  readonly items: readonly Item[];
  /** Whole list prices by item; null for those who see none. */
  readonly prices: Readonly<Record<string, number>> | null;
  /** What special vessels cost; null for those who see no prices. */
  readonly specialRates: SpecialRates | null;
}

/** Price and delivery of what is chosen so far. */
export interface Commercial {
  /** Sum of the list prices; null where the person sees none. */
  readonly listPrice: number | null;
  readonly days: number;
  readonly weeks: number;
  readonly chain: readonly DeliveryStep[];
}

/** A system as far as it is chosen: its proof, its price, what there is to draw. */
export interface SystemView {
  readonly assessment: Assessment;
  readonly commercial: Commercial;
  readonly drawing: DrawingFacts;
  /** Names of the special parts that are made for this system, by their numbers. */
  readonly specials: Readonly<Record<string, string>>;
}

/** What an option would mean for the whole system, every other choice kept. */
export interface OptionEffect {
  readonly status: Status;
  readonly leastMargin: LeastMargin | null;
  readonly days: number;
}

/** One thing that may stand in a slot. */
export interface SlotOption {
  /** Item number; null for none. */
  readonly id: string | null;
  readonly name: string;
  /** Against what is chosen now, or against nothing where nobody has chosen; null where the person sees no prices. */
  readonly priceDifference: number | null;
  /** Undefined for what does not lead to a valid whole. */
  readonly effect: OptionEffect | undefined;
}

/** Why an option does not lead to a valid whole. */
export interface Objection {
  /** Sentences with numbers, worst first. */
  readonly reasons: readonly string[];
}

/** Smallest changes that would let an option in, with the conflicts that they mend. */
export type Mending = Pick<ExplainAnswer, 'conflicts' | 'repairs'>;

/** Everything the engine can be asked. */
export interface Asks {
  readonly view: { readonly ask: { readonly document: SystemInput }; readonly answer: SystemView };
  readonly narrow: { readonly ask: { readonly document: SystemInput }; readonly answer: NarrowAnswer };
  readonly options: {
    readonly ask: {
      readonly document: SystemInput;
      readonly path: SlotPath;
      readonly valid: readonly (string | null)[];
    };
    readonly answer: readonly SlotOption[];
  };
  readonly object: {
    readonly ask: { readonly document: SystemInput; readonly path: SlotPath; readonly option: string | null };
    readonly answer: Objection;
  };
  readonly mend: {
    readonly ask: { readonly document: SystemInput; readonly path: SlotPath; readonly option: string | null };
    readonly answer: Mending;
  };
  readonly explain: { readonly ask: { readonly document: SystemInput }; readonly answer: ExplainAnswer };
  /** The open slots filled, the cheapest whole first; undefined when there is none. */
  readonly complete: {
    readonly ask: { readonly document: SystemInput };
    readonly answer: SystemInput | undefined;
  };
  readonly prove: { readonly ask: { readonly document: SystemInput }; readonly answer: Assessment };
}

export type AskKind = keyof Asks;

/** An answer, or what in the document cannot be read. */
export type Answered<K extends AskKind> = Outcome<Asks[K]['answer'], readonly InputTrouble[]>;

export type ToWorker =
  | { readonly kind: 'stock'; readonly stock: Stock }
  | {
      readonly kind: 'ask';
      readonly id: number;
      readonly about: AskKind;
      readonly ask: Asks[AskKind]['ask'];
    }
  | { readonly kind: 'cancel'; readonly id: number };

export type FromWorker =
  | { readonly id: number; readonly answer: Answered<AskKind> }
  /** The question could not be answered; others still can. */
  | { readonly id: number; readonly fault: string };
