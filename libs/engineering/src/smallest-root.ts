/** Where an increasing condition first holds. */
export interface RootSearch {
  readonly low: number;
  readonly high: number;
  /** False at `low`, true at `high`, and never true again below where it became true. */
  isEnough(value: number): boolean;
}

/** The smallest value that is enough, by bisection to the last digits of a double; steps in the condition are fine. */
export const smallestEnough = ({ low, high, isEnough }: RootSearch): number => {
  let [below, above] = [low, high];
  for (let step = 0; step < 100; step += 1) {
    const middle = (below + above) / 2;
    if (middle <= below || middle >= above) break;
    if (isEnough(middle)) above = middle;
    else below = middle;
  }
  return above;
};
