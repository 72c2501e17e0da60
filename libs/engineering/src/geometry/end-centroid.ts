import { integral } from '../gauss-legendre.js';
import type { EndProfile } from './end-profile.js';
import type { MeridianArc, MeridianPoint } from './meridian.js';

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
  const along = (part: (point: MeridianPoint) => number): number =>
    arcs.reduce(
      (sum, { from, to, at }) =>
        sum +
        integral(
          (parameter) => {
            const point = at(parameter);
            return 2 * Math.PI * point.speed * part(point);
          },
          from,
          to,
        ),
      0,
    );
  const layers = ({ radius, normalRadial, curvature }: MeridianPoint) => ({
    constant: radius,
    linear: normalRadial + radius * curvature,
    square: normalRadial * curvature,
  });
  const depth = (point: MeridianPoint): number => {
    const { constant, linear, square } = layers(point);
    return constant * t + (linear * t ** 2) / 2 + (square * t ** 3) / 3;
  };
  const outwards = (point: MeridianPoint): number => {
    const { constant, linear, square } = layers(point);
    return (constant * t ** 2) / 2 + (linear * t ** 3) / 3 + (square * t ** 4) / 4;
  };
  const volume = along(depth);
  const moment = along((point) => point.height * depth(point) + point.normalVertical * outwards(point));
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
