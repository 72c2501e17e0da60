import type { SetLayout } from './set-layout.js';

/** Impellers that follow the wall sit a little above the bottom; the others a third of their diameter. */
const closeImpellers = new Set(['anchor', 'double helical ribbon']);

/** Lowest point of the stirrer, below the sealing plane [mm]. */
export const stirrerEnd = (layout: SetLayout): number => {
  const { stirrer, shaft } = layout.set;
  const { depth, neckTop, inner } = layout;
  if (stirrer === null) return depth * 0.9;
  if (stirrer.impeller === 'magnetic bar') return depth - 0.5 * layout.detail;
  if (closeImpellers.has(stirrer.impeller)) return depth - (inner - stirrer.diameter / 2) - 1;
  const half = stirrer.bladeWidth / 2;
  const wanted = depth - Math.max(stirrer.diameter / 3 - half, 0.03 * depth);
  if (shaft === null) return wanted;
  const reached = layout.coverTop * 0.5 + neckTop * 0.1 + shaft.length;
  return Math.min(depth - 0.02 * depth, Math.max(reached, depth * 0.5));
};
