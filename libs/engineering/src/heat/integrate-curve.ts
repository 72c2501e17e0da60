import { fail, type Outcome, succeed } from '@flangewise/model';
import { shown } from '../shown.js';
import { Outcome as Integration, Solver } from './odex-solver.js';

const relativeTolerance = 1e-8;

/** Steps of a whole curve: enough for every real system, and an end for stiff ones. */
const mostSteps = 20_000;

export interface CurveProblem {
  readonly start: readonly number[];
  readonly durationS: number;
  /** Number of points, the start with it. */
  readonly points: number;
  /** Rates of change of the state; the equation does not depend on time. */
  rates(state: readonly number[]): number[];
}

/**
 * States of a system of differential equations at evenly spaced times.
 * @error CALC_NOT_CONVERGED
 * @source hairer-norsett-wanner-1 ch. II.9 (extrapolation of Gragg, Bulirsch and Stoer)
 */
export const integrateCurve = (problem: CurveProblem): Outcome<readonly (readonly number[])[]> => {
  const states: (readonly number[])[] = [problem.start];
  const interval = problem.durationS / (problem.points - 1);
  let state = problem.start;
  for (let point = 1; point < problem.points; point += 1) {
    const solver = new Solver(state.length);
    solver.relativeTolerance = relativeTolerance;
    solver.absoluteTolerance = relativeTolerance;
    solver.initialStepSize = interval;
    solver.maxStepSize = interval;
    solver.maxSteps = Math.max(100, Math.ceil(mostSteps / problem.points));
    const { y, outcome } = solver.solve((_time, at) => problem.rates(at), 0, [...state], interval);
    if (outcome !== Integration.Converged || !y.every(Number.isFinite)) {
      return fail({
        code: 'CALC_NOT_CONVERGED',
        message: `durationS: ${shown(problem.durationS)} s given; the integration stopped after ${shown(interval * point)} s. Take a shorter duration or more points`,
        field: 'durationS',
        given: problem.durationS,
      });
    }
    state = y;
    states.push(y);
  }
  return succeed(states);
};

export interface Passage {
  readonly timesS: readonly number[];
  readonly values: readonly number[];
}

/** When a value first holds, between two points linear in `distance`; undefined where it never does. */
export const firstTime = (
  { timesS, values }: Passage,
  distance: (value: number) => number,
): number | undefined => {
  const after = values.findIndex((value) => distance(value) <= 0);
  const [before, reached] = [values[after - 1], values[after]];
  if (reached === undefined) return undefined;
  if (before === undefined) return timesS[0];
  const [from, to] = [timesS[after - 1] ?? 0, timesS[after] ?? 0];
  const [left, right] = [distance(before), distance(reached)];
  return from + ((to - from) * left) / (left - right);
};
