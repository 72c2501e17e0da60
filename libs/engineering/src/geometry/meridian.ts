import { type EndSize, torisphericalProportions } from './end-form.js';

/** A point of the inner surface's meridian, seen in the plane of radius and height [m]. */
export interface MeridianPoint {
  readonly radius: number;
  /** Above the lowest point. */
  readonly height: number;
  /** Outward normal of length 1. */
  readonly normalRadial: number;
  readonly normalVertical: number;
  /** Curvature of the meridian [1/m]. */
  readonly curvature: number;
  /** Length of the meridian per unit of the parameter. */
  readonly speed: number;
}

/** A smooth piece of the meridian, run through from the axis outwards. */
export interface MeridianArc {
  readonly from: number;
  readonly to: number;
  at(parameter: number): MeridianPoint;
}

interface Circle {
  readonly radius: number;
  readonly centreRadius: number;
  readonly centreHeight: number;
}

/** The parameter is the angle of the normal to the axis. */
const circularArc = (circle: Circle, from: number, to: number): MeridianArc => ({
  from,
  to,
  at: (angle) => ({
    radius: circle.centreRadius + circle.radius * Math.sin(angle),
    height: circle.centreHeight - circle.radius * Math.cos(angle),
    normalRadial: Math.sin(angle),
    normalVertical: -Math.cos(angle),
    curvature: 1 / circle.radius,
    speed: circle.radius,
  }),
});

const torispherical = (diameter: number, R: number, r: number): readonly MeridianArc[] => {
  const c = diameter / 2 - r;
  const turn = Math.asin(Math.min(1, c / (R - r)));
  const knuckleHeight = R - (R - r) * Math.cos(turn);
  return [
    circularArc({ radius: R, centreRadius: 0, centreHeight: R }, 0, turn),
    circularArc({ radius: r, centreRadius: c, centreHeight: knuckleHeight }, turn, Math.PI / 2),
  ];
};

const elliptical = (a: number, b: number): MeridianArc => ({
  from: 0,
  to: Math.PI / 2,
  at: (angle) => {
    const [sine, cosine] = [Math.sin(angle), Math.cos(angle)];
    const speed = Math.hypot(a * cosine, b * sine);
    return {
      radius: a * sine,
      height: b * (1 - cosine),
      normalRadial: (b * sine) / speed,
      normalVertical: (-a * cosine) / speed,
      curvature: (a * b) / speed ** 3,
      speed,
    };
  },
});

const straight = (diameter: number, halfAngle: number): MeridianArc => ({
  from: 0,
  to: diameter / 2 / Math.tan(halfAngle),
  at: (height) => ({
    radius: height * Math.tan(halfAngle),
    height,
    normalRadial: Math.cos(halfAngle),
    normalVertical: -Math.sin(halfAngle),
    curvature: 0,
    speed: 1 / Math.cos(halfAngle),
  }),
});

/** The meridian of an end in smooth pieces; none for a flat end, which has no height. */
export const meridianOf = (size: EndSize): readonly MeridianArc[] => {
  const { form, diameter, nominalDiameter } = size;
  switch (form) {
    case 'flat':
      return [];
    case 'torispherical DIN 28011':
    case 'torispherical DIN 28013': {
      const { crown, knuckle } = torisphericalProportions[form];
      return torispherical(diameter, crown * nominalDiameter, knuckle * nominalDiameter);
    }
    case '2:1 ellipsoidal':
      return [elliptical(diameter / 2, diameter / 4)];
    case 'hemispherical': {
      const radius = diameter / 2;
      return [circularArc({ radius, centreRadius: 0, centreHeight: radius }, 0, Math.PI / 2)];
    }
    case 'conical':
      return [straight(diameter, size.coneHalfAngleRad)];
  }
};
