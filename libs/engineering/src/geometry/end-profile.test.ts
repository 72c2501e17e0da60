import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { endForms, endProfile } from './end-form.js';
import {
  cone,
  type EndProfile,
  heightOfVolume,
  semiEllipsoid,
  torisphere,
  wallVolume,
} from './end-profile.js';

/** Radius of a torispherical surface at height z, from its two circles alone. */
const torisphereRadius = (D: number, R: number, r: number) => {
  const c = D / 2 - r;
  const H = R - Math.sqrt((R - r) ** 2 - c ** 2);
  const tangent = R * (1 - Math.sqrt(1 - (c / (R - r)) ** 2));
  return {
    H,
    at: (z: number): number =>
      z < tangent ? Math.sqrt(z * (2 * R - z)) : c + Math.sqrt(Math.max(0, r * r - (H - z) ** 2)),
  };
};

const integrate = (f: (z: number) => number, to: number): number => {
  const steps = 200_000;
  const dz = to / steps;
  let sum = 0;
  for (let i = 0; i < steps; i += 1) sum += f((i + 0.5) * dz);
  return sum * dz;
};

/** Surface by summing frusta. */
const surface = (f: (z: number) => number, to: number): number => {
  const steps = 200_000;
  let sum = 0;
  for (let i = 0; i < steps; i += 1) {
    const [z0, z1] = [(i * to) / steps, ((i + 1) * to) / steps];
    sum += Math.PI * (f(z0) + f(z1)) * Math.hypot(z1 - z0, f(z1) - f(z0));
  }
  return sum;
};

describe('the torispherical surface', () => {
  it.each([
    [1, 1, 0.1],
    [1, 0.8, 0.154],
    [0.988, 1, 0.1],
  ])('agrees with numerical integration of its circles (D %f, R %f, r %f)', (D, R, r) => {
    const end = torisphere({ diameter: D, crownRadius: R, knuckleRadius: r });
    const { H, at } = torisphereRadius(D, R, r);
    expect(end.height).toBeCloseTo(H, 12);
    for (const share of [0.2, 0.6, 1]) {
      const z = share * H;
      expect(end.volumeTo(z) / integrate((u) => Math.PI * at(u) ** 2, z)).toBeCloseTo(1, 6);
      expect(end.areaTo(z) / surface(at, z)).toBeCloseTo(1, 4);
    }
  });

  it('has the depths that the standards print: h2 = 0.1935 D_a − 0.455 s and 0.255 D_a − 0.635 s', () => {
    // DIN 28011 and DIN 28013, depth of the dish inside; both rules are rounded by the standard.
    const [Da, s] = [1, 0.01];
    const depth = (form: 'torispherical DIN 28011' | 'torispherical DIN 28013') =>
      endProfile({ form, diameter: Da - 2 * s, nominalDiameter: Da, coneHalfAngleRad: 1 }).height;
    expect(depth('torispherical DIN 28011')).toBeCloseTo(0.1935 * Da - 0.455 * s, 3);
    expect(depth('torispherical DIN 28013')).toBeCloseTo(0.255 * Da - 0.635 * s, 3);
  });

  it('has the volume of the handbooks within 3 %: 0.1 and 0.1298 of the cube of the inner diameter', () => {
    // Handbook rules from memory, for walls of about 1 % of the diameter.
    const volume = (form: 'torispherical DIN 28011' | 'torispherical DIN 28013') =>
      endProfile({ form, diameter: 0.98, nominalDiameter: 1, coneHalfAngleRad: 1 }).volume / 0.98 ** 3;
    expect(Math.abs(volume('torispherical DIN 28011') / 0.1 - 1)).toBeLessThan(0.03);
    expect(Math.abs(volume('torispherical DIN 28013') / 0.1298 - 1)).toBeLessThan(0.03);
  });

  it('becomes a hemisphere', () => {
    const end = torisphere({ diameter: 2, crownRadius: 1, knuckleRadius: 1 });
    expect(end.volume).toBeCloseTo((2 / 3) * Math.PI, 12);
    expect(end.area).toBeCloseTo(2 * Math.PI, 12);
    expect(wallVolume(end, 0.1)).toBeCloseTo((2 / 3) * Math.PI * (1.1 ** 3 - 1), 12);
  });
});

describe('other surfaces', () => {
  it('integrate to the volume and area of a 2:1 ellipsoid', () => {
    const end = semiEllipsoid(1, 0.25);
    const at = (z: number) => 0.5 * Math.sqrt(Math.max(0, 1 - (1 - z / 0.25) ** 2));
    expect(end.volume).toBeCloseTo(Math.PI / 24, 12);
    expect(end.volumeTo(0.1) / integrate((z) => Math.PI * at(z) ** 2, 0.1)).toBeCloseTo(1, 6);
    expect(end.area / surface(at, 0.25)).toBeCloseTo(1, 4);
    expect(end.areaTo(0.1) / surface(at, 0.1)).toBeCloseTo(1, 3);
  });

  it('integrate to the volume and area of a cone', () => {
    const end = cone(1, Math.PI / 6);
    expect(end.volume).toBeCloseTo((Math.PI / 12) * end.height, 12);
    expect(end.area).toBeCloseTo((Math.PI / 2) * Math.hypot(end.height, 0.5), 12);
  });

  it('give a wall between that on the inner surface and that of an enclosing solid', () => {
    // The wall of an ellipsoid lies inside the ellipsoid whose semi-axes are longer by t, apart from higher orders.
    const end = semiEllipsoid(1, 0.25);
    const t = 0.005;
    const enclosing = ((2 * Math.PI) / 3) * ((0.5 + t) ** 2 * (0.25 + t) - 0.5 ** 2 * 0.25);
    expect(wallVolume(end, t)).toBeGreaterThan(end.area * t);
    expect(wallVolume(end, t) / enclosing).toBeCloseTo(1, 1);
  });
});

const anyEnd: fc.Arbitrary<EndProfile> = fc
  .record({
    form: fc.constantFrom(...endForms.filter((form) => form !== 'flat')),
    diameter: fc.double({ min: 0.01, max: 5, noNaN: true }),
    wall: fc.double({ min: 0, max: 0.05, noNaN: true }),
    coneHalfAngleRad: fc.double({ min: 0.2, max: 1.3, noNaN: true }),
  })
  .map(({ form, diameter, wall, coneHalfAngleRad }) =>
    endProfile({ form, diameter, nominalDiameter: diameter * (1 + 2 * wall), coneHalfAngleRad }),
  );

describe('every surface', () => {
  it('gives the height of a volume back', () => {
    fc.assert(
      fc.property(anyEnd, fc.double({ min: 0, max: 1, noNaN: true }), (end, share) => {
        const z = heightOfVolume(end, share * end.volume);
        expect(z).toBeGreaterThanOrEqual(0);
        expect(z).toBeLessThanOrEqual(end.height);
        expect(Math.abs(end.volumeTo(z) - share * end.volume)).toBeLessThanOrEqual(1e-9 * end.volume);
      }),
    );
  });

  it('grows in volume and surface with height', () => {
    fc.assert(
      fc.property(
        anyEnd,
        fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })),
        (end, shares) => {
          const [low, high] = [Math.min(...shares) * end.height, Math.max(...shares) * end.height];
          expect(end.volumeTo(high)).toBeGreaterThanOrEqual(end.volumeTo(low) - 1e-12 * end.volume);
          expect(end.areaTo(high)).toBeGreaterThanOrEqual(end.areaTo(low) - 1e-12 * end.area);
        },
      ),
    );
  });
});
