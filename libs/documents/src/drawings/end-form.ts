import { arc, type Contour, polyline } from './contour.js';
import type { DrawnVessel } from './drawing-model.js';

/**
 * Crown and knuckle of a torispherical end as multiples of the outer diameter.
 *
 * @source DIN 28011:2012 (R = Da, r = 0.1 Da), DIN 28013:2012 (R = 0.8 Da, r = 0.154 Da)
 */
const torispherical = {
  'torispherical DIN 28011': { crown: 1, knuckle: 0.1 },
  'torispherical DIN 28013': { crown: 0.8, knuckle: 0.154 },
} as const;

/** Inner radius, where the cylinder stops, wall of the end [mm]. */
export interface EndPlace {
  readonly radius: number;
  readonly top: number;
  readonly wall: number;
}

interface End {
  /** Depth of the inner surface below the cylinder [mm]. */
  readonly depth: number;
  /** Right half of the line at a distance outside the inner surface, from the cylinder to the axis [mm]. */
  readonly line: (offset: number) => Contour;
}

const torisphericalEnd = (
  { radius, top, wall }: EndPlace,
  ratios: { crown: number; knuckle: number },
): End => {
  const outerDiameter = 2 * (radius + wall);
  const [crown, knuckle] = [ratios.crown * outerDiameter, ratios.knuckle * outerDiameter];
  const reach = radius - knuckle;
  const rise = Math.sqrt((crown - knuckle) ** 2 - reach ** 2);
  const depth = crown - rise;
  const tangent = (Math.atan2(rise, reach) * 180) / Math.PI;
  return {
    depth,
    line: (offset) => [
      ...arc({ centre: [reach, top], radius: knuckle + offset, from: 0, to: tangent }),
      ...arc({ centre: [0, top + depth - crown], radius: crown + offset, from: tangent, to: 90 }).slice(1),
    ],
  };
};

const ellipticEnd = (radius: number, top: number, depth: number): End => ({
  depth,
  line: (offset) => arc({ centre: [0, top], radius: [radius + offset, depth + offset], from: 0, to: 90 }),
});

/** The end of a vessel below its cylinder. */
export const endOf = (form: DrawnVessel['endForm'], place: EndPlace): End => {
  const { radius, top } = place;
  switch (form) {
    case 'flat':
      return {
        depth: 0,
        line: (offset) =>
          polyline([radius + offset, top], [radius + offset, top + offset], [0, top + offset]),
      };
    case '2:1 ellipsoidal':
      return ellipticEnd(radius, top, radius / 2);
    case 'hemispherical':
      return ellipticEnd(radius, top, radius);
    case 'torispherical DIN 28011':
    case 'torispherical DIN 28013':
      return torisphericalEnd(place, torispherical[form]);
  }
};
