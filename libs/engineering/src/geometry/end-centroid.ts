import { eachNode, integral } from '../gauss-legendre.js';
import type { EndProfile } from './end-profile.js';
import type { MeridianArc } from './meridian.js';

/**
 * Volume and height of the centre of a wall of even thickness t outside the surface, with heights above the
 * lowest inner point. A layer at the distance s has the surface 2π (ρ + s n_ρ)(1 + κ s) dl; the powers of s
 * are integrated in closed form.
 */
export const wallCentroid = (
  arcs: readonly MeridianArc[],
  thickness: number,
): { readonly volume: number; readonly height: number } => {
  const t = thickness;
  let [volume, moment] = [0, 0];
  for (const { from, to, at } of arcs) {
    eachNode(from, to, (parameter, weight) => {
      const { radius, height, normalRadial, normalVertical, curvature, speed } = at(parameter);
      const linear = normalRadial + radius * curvature;
      const square = normalRadial * curvature;
      const depth = radius * t + (linear * t ** 2) / 2 + (square * t ** 3) / 3;
      const outwards = (radius * t ** 2) / 2 + (linear * t ** 3) / 3 + (square * t ** 4) / 4;
      const ring = 2 * Math.PI * speed * weight;
      volume += ring * depth;
      moment += ring * (height * depth + normalVertical * outwards);
    });
  }
  return { volume, height: moment / volume };
};

/**
 * ∫ z dV of the contents of an end up to a level, by parts: z V(z) − ∫ V dz, split where the meridian changes its curve.
 */
export const contentsMoment = (end: EndProfile, arcs: readonly MeridianArc[], level: number): number => {
  let [below, from] = [0, 0];
  for (const { to, at } of arcs) {
    const upTo = Math.min(level, at(to).height);
    if (upTo > from) below += integral((z) => end.volumeTo(z), from, upTo);
    from = Math.max(from, upTo);
  }
  return level * end.volumeTo(level) - below;
};
