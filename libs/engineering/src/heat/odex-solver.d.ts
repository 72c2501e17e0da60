/** What is used here of odex 2.0.4 (Gragg, Bulirsch, Stoer; after Hairer and Wanner). */
export declare enum Outcome {
  Converged = 0,
  MaxStepsExceeded = 1,
  EarlyReturn = 2,
}

export declare class Solver {
  constructor(components: number);
  absoluteTolerance: number;
  relativeTolerance: number;
  maxSteps: number;
  initialStepSize: number;
  maxStepSize: number;
  solve(
    derivative: (x: number, y: number[]) => number[],
    start: number,
    initial: number[],
    end: number,
  ): { readonly y: number[]; readonly outcome: Outcome };
}
