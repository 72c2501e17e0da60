declare module 'logic-solver' {
  namespace Logic {
    type Term = string;
    interface Formula {
      readonly type: string;
    }
    interface Bits {
      readonly bits: readonly (Formula | Term)[];
    }
    interface Solution {
      getTrueVars(): string[];
    }
    class Solver {
      require(formula: Formula | Term): void;
      solve(): Solution | null;
      solveAssuming(formula: Formula | Term): Solution | null;
      minimizeWeightedSum(solution: Solution, formulas: Term[], weights: number[]): Solution;
    }
    function or(terms: Term[]): Formula;
    function and(terms: Term[]): Formula;
    function weightedSum(terms: Term[], weights: number[]): Bits;
    function constantBits(value: number): Bits;
    function lessThanOrEqual(a: Bits, b: Bits): Formula;
  }
  export = Logic;
}
