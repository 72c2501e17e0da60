import type { ExplainAnswer, InquiryInput, NarrowAnswer, SolveAnswer, SystemInput } from '@flangewise/model';
import type { RenderedFile, RenderQuestion } from './render-offer.js';

interface Priced {
  /** The list whose prices may enter the answer. Without one prices are not known to the computation at all. */
  readonly priceList: string | null;
}

/** Computations that take their time. Questions and answers are plain data, so that they can be asked of another thread. */
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
}

/** Whoever does the jobs. */
export type Workers = {
  readonly [J in keyof Jobs]: (
    question: Jobs[J]['question'],
  ) => Jobs[J]['answer'] | Promise<Jobs[J]['answer']>;
};
