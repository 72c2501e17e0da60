import type { Conditions } from './conditions.js';

/** Sets that are mounted together with this one: alternate sets one at a time, all others at once. */
export const setsAtOnce = (set: number, sets: number, { arrangement }: Pick<Conditions, 'arrangement'>) =>
  arrangement === 'alternate' ? [set] : Array.from({ length: sets }, (_, k) => k);
