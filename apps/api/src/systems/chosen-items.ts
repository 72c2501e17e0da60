import type { SystemInput } from '@flangewise/model';

/** Numbers of the items that a system has chosen, wherever they stand. */
export const chosenItems = ({ frame = {}, sets = [] }: SystemInput): ReadonlySet<unknown> =>
  new Set([frame, ...sets.map(({ choices }) => choices)].flatMap((choices) => Object.values(choices)));
