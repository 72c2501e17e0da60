/** Where an increasing condition first holds. */
export interface RootSearch {
  readonly low: number;
  readonly high: number;
  /** How near the answer may come from above; the last digit of a double unless given. */
  readonly tolerance?: number;
  /** False at `low`, true at `high`, and never true again below where it became true. */
  isEnough(value: number): boolean;
}

/** The smallest value that is enough, by bisection; steps in the condition are fine. */
export const smallestEnough = ({ low, high, tolerance = 0, isEnough }: RootSearch): number => {
  let [below, above] = [low, high];
  for (let step = 0; step < 100 && above - below > tolerance; step += 1) {
    const middle = (below + above) / 2;
    if (middle <= below || middle >= above) break;
    if (isEnough(middle)) above = middle;
    else below = middle;
  }
  return above;
};
