import type { Network } from './network.js';
import { fullSet } from './bits.js';

/**
 * Positions whose present classes alone leave a constraint without support: every other position is opened to all its
 * classes as long as the constraint stays refuted. The state is as before afterwards.
 */
export function neededPositions(network: Network, views: Int32Array, isRefuted: () => boolean): number[] {
  const needed: number[] = [];
  const saved = network.state;
  network.state = Uint32Array.from(saved);
  for (const [position, id] of views.entries()) {
    const { offset, words, count } = network.view(id);
    network.state.set(fullSet(count), offset);
    if (isRefuted()) continue;
    network.state.set(saved.subarray(offset, offset + words), offset);
    needed.push(position);
  }
  network.state = saved;
  return needed;
}
