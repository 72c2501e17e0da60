import { benchOf, titleOf } from '@flangewise/constraints';
import type { System } from '@flangewise/model';
import type { Workshop } from '../workshop/workshop.js';

/** What a system is called in lists: its vessels and its closure, or what it is for while no vessel is chosen. */
export function titleOfSystem(system: System, { bench }: Workshop): string {
  const { items } = benchOf(system, bench).range;
  const chosen = system.sets.flatMap(({ choices }) => [choices.vessel, choices.closure]);
  const title = titleOf(
    chosen
      .flatMap((id) => (typeof id === 'string' ? [items.get(id)] : []))
      .filter((item) => item !== undefined),
  );
  return title === '' ? 'Nothing chosen yet' : title;
}
