import type { CatalogueDifference, ExchangeFormat } from '@flangewise/catalogue/exchange';
import type {
  AuditAnswer,
  ExplainAnswer,
  InputTrouble,
  InquiryInput,
  NarrowAnswer,
  SolveAnswer,
  SystemInput,
} from '@flangewise/model';
import type { AuditMeter } from '../catalogue/audit-meter.js';
import type { PackedCatalogue } from '../catalogue/packed-catalogue.js';
import type { ReadFile } from '../catalogue/read-file.js';
import type { RenderedFile, RenderQuestion } from './render-offer.js';

interface Priced {
  /** The list whose prices may enter the answer. Without one prices are not known to the computation at all. */
  readonly priceList: string | null;
}

/**
 * Computations over a catalogue that take their time. Questions and answers are plain data, so that they can be asked of another
 * thread.
 */
export interface Jobs {
  readonly solve: {
    readonly question: Priced & { readonly inquiry: InquiryInput; readonly most?: number | undefined };
    readonly answer: SolveAnswer;
  };
  readonly narrow: { readonly question: { readonly system: SystemInput }; readonly answer: NarrowAnswer };
  readonly explain: {
    readonly question: Priced & { readonly system: SystemInput };
    readonly answer: ExplainAnswer;
  };
  readonly render: { readonly question: RenderQuestion; readonly answer: readonly RenderedFile[] };
  /** The range and its rules looked at as a whole; how far it is, is written where both threads read. */
  readonly audit: { readonly question: { readonly progress: AuditMeter }; readonly answer: AuditAnswer };
  /** What keeps the catalogue from being one, each item and price by itself and all together. */
  readonly check: { readonly question: null; readonly answer: readonly InputTrouble[] };
  /** What the catalogue has otherwise than one before it. */
  readonly compare: {
    readonly question: { readonly before: PackedCatalogue };
    readonly answer: CatalogueDifference;
  };
  /** What a file says about the catalogue. */
  readonly readFile: {
    readonly question: { readonly format: ExchangeFormat; readonly content: Uint8Array };
    readonly answer: ReadFile;
  };
  /** The rules in force as a PDF, under the name of the catalogue's maker. */
  readonly ruleBook: { readonly question: null; readonly answer: Uint8Array };
  readonly writeFile: { readonly question: { readonly format: ExchangeFormat }; readonly answer: Uint8Array };
}

/** A job and the catalogue that it is done over. */
export interface Order<J extends keyof Jobs> {
  readonly over: PackedCatalogue;
  readonly question: Jobs[J]['question'];
}

/** Asks for a job, wherever it is done; it is given up when `signal` says so. */
export type RunJob = <J extends keyof Jobs>(
  job: J,
  order: Order<J>,
  signal?: AbortSignal,
) => Promise<Jobs[J]['answer']>;

/** Whoever does the jobs. */
export type Workers = {
  readonly [J in keyof Jobs]: (order: Order<J>) => Jobs[J]['answer'] | Promise<Jobs[J]['answer']>;
};
