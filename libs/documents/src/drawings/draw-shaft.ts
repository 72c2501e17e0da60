import { polyline } from './contour.js';
import type { Shape } from './scene.js';
import type { SetLayout } from './set-layout.js';
import { seenBox, stroke } from './shape.js';
import { stirrerEnd } from './stirrer-end.js';

/** The shaft from the coupling to the stirrer, uncut; hollow for a gas-inducing stirrer. */
export const drawShaft = (layout: SetLayout): Shape[] => {
  const { stirrer, shaft, coupling } = layout.set;
  if (stirrer?.impeller === 'magnetic bar' || (shaft === null && coupling === null)) return [];
  const s = layout.shaftRadius;
  const end = stirrerEnd(layout) - (stirrer === null ? 0 : Math.min(stirrer.bladeWidth * 0.3, 4 * s));
  const start = layout.coverTop - (coupling === null ? 6 * layout.detail : 10 * layout.detail);
  const hollow =
    stirrer?.impeller === 'hollow shaft turbine'
      ? [
          stroke(
            'hidden',
            polyline([-0.42 * s, 18 * layout.detail], [-0.42 * s, end]),
            polyline([0.42 * s, 18 * layout.detail], [0.42 * s, end]),
          ),
        ]
      : [];
  return [seenBox([-s, start], [s, end]), ...hollow];
};
