import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, evaluateWithEvidence } from '../calculation.js';
import { integral } from '../gauss-legendre.js';
import { centreOfGravity } from './centre-of-gravity.js';
import { contentsMoment, wallCentroid } from './end-centroid.js';
import { type EndForm, endForms, endProfile } from './end-form.js';
import { wallVolume } from './end-profile.js';
import { meridianOf } from './meridian.js';
import { vessel } from './vessel.js';
import { vesselCentreOfGravity } from './vessel-centre-of-gravity.js';

const endOf = (form: EndForm, diameter = 1, nominalDiameter = diameter) => {
  const size = { form, diameter, nominalDiameter, coneHalfAngleRad: Math.PI / 6 };
  return { profile: endProfile(size), arcs: meridianOf(size) };
};

const dishedForms = endForms.filter((form) => form !== 'flat');

describe('the meridian', () => {
  it.each(dishedForms)('of the %s end carries its surface and volume', (form) => {
    const { profile, arcs } = endOf(form, 0.98, 1);
    const along = (part: (point: ReturnType<(typeof arcs)[number]['at']>) => number): number =>
      arcs.reduce((sum, { from, to, at }) => sum + integral((u) => part(at(u)) * at(u).speed, from, to), 0);
    expect(along(({ radius }) => 2 * Math.PI * radius) / profile.area).toBeCloseTo(1, 9);
    // dz = n_ρ dl along a meridian that runs outwards and up.
    expect(
      along(({ radius, normalRadial }) => Math.PI * radius ** 2 * normalRadial) / profile.volume,
    ).toBeCloseTo(1, 9);
    expect(along(({ normalRadial }) => normalRadial)).toBeCloseTo(profile.height, 12);
    expect(along(({ normalVertical }) => -normalVertical)).toBeCloseTo(0.49, 12);
  });

  it.each(dishedForms)('of the %s end has no step between its pieces', (form) => {
    const { arcs } = endOf(form);
    arcs.slice(1).forEach((arc, i) => {
      const [before, after] = [arcs[i]!.at(arcs[i]!.to), arc.at(arc.from)];
      expect(after.radius).toBeCloseTo(before.radius, 12);
      expect(after.height).toBeCloseTo(before.height, 12);
      expect(after.normalRadial).toBeCloseTo(before.normalRadial, 12);
    });
  });
});

describe('the wall of an end', () => {
  it.each(dishedForms.filter((form) => form !== 'conical'))(
    'of the form %s has the volume of Steiner’s formula',
    (form) => {
      const { profile, arcs } = endOf(form, 0.98, 1);
      expect(wallCentroid(arcs, 0.01).volume / wallVolume(profile, 0.01)).toBeCloseTo(1, 6);
    },
  );

  it('of a hemisphere has its centre 3/8 (R⁴ − r⁴)/(R³ − r³) below the tangent line', () => {
    const { arcs } = endOf('hemispherical');
    const centre = ((3 / 8) * (0.6 ** 4 - 0.5 ** 4)) / (0.6 ** 3 - 0.5 ** 3);
    expect(wallCentroid(arcs, 0.1).height).toBeCloseTo(0.5 - centre, 12);
  });

  it('of a thin cone has its centre two thirds up, drawn down by its thickness', () => {
    // Surface 2h/3 above the point; the wall stands t/2 sin α below it; and its outer layers are longer at the point
    // as at the rim, which draws by t cos α/(6 tan α).
    const { profile, arcs } = endOf('conical');
    const [t, alpha] = [1e-6, Math.PI / 6];
    const drawn = (t / 2) * Math.sin(alpha) + (t * Math.cos(alpha)) / (6 * Math.tan(alpha));
    expect(wallCentroid(arcs, t).height).toBeCloseTo((2 / 3) * profile.height - drawn, 10);
  });
});

describe('the contents of an end', () => {
  // Beer and Johnston, Statics, ch. 5: centroids of solids; cap from its pole: h (8R − 3h) / (4 (3R − h)).
  it.each([
    ['hemispherical', 1, 5 / 16],
    ['2:1 ellipsoidal', 1, 5 / 32],
    ['conical', 1, (3 / 4) * (0.5 / Math.tan(Math.PI / 6))],
    ['hemispherical', 0.6, (0.3 * (8 * 0.5 - 0.9)) / (4 * (1.5 - 0.3))],
  ] as const)('of the form %s filled to %d of its height lie at %d', (form, share, expected) => {
    const { profile, arcs } = endOf(form);
    const level = share * profile.height;
    expect(contentsMoment(profile, arcs, level) / profile.volumeTo(level)).toBeCloseTo(expected, 12);
  });

  it.each(dishedForms)('of the form %s agree with slices', (form) => {
    const { profile, arcs } = endOf(form, 0.98, 1);
    const slices = 20_000;
    for (const share of [0.3, 0.7, 1]) {
      const level = share * profile.height;
      let moment = 0;
      for (let i = 0; i < slices; i += 1) {
        const [low, high] = [(i * level) / slices, ((i + 1) * level) / slices];
        moment += ((low + high) / 2) * (profile.volumeTo(high) - profile.volumeTo(low));
      }
      expect(contentsMoment(profile, arcs, level) / moment).toBeCloseTo(1, 7);
    }
  });
});

const base = {
  innerDiameterM: 0.3,
  cylinderLengthM: 0.3,
  wallThicknessM: 0.01,
  endThicknessM: 0.01,
  form: 'hemispherical' as const,
  densityKgPerM3: 8000,
};

const centres = (inputs: object) => {
  const outcome = evaluate(vesselCentreOfGravity, { ...base, ...inputs });
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
};

describe('geometry.vesselCentreOfGravity', () => {
  it('puts shell, end, flange and contents where they are', () => {
    const result = centres({ flangeOuterDiameterM: 0.4, flangeHeightM: 0.04, fillVolumeM3: 0.02 });
    expect(result.shellCentreM).toBeCloseTo(0.15 + 0.15, 12);
    expect(result.flangeCentreM).toBeCloseTo(0.45 - 0.02, 12);
    expect(result.endCentreM).toBeCloseTo(
      0.15 - ((3 / 8) * (0.16 ** 4 - 0.15 ** 4)) / (0.16 ** 3 - 0.15 ** 3),
      12,
    );
    const endVolume = (2 / 3) * Math.PI * 0.15 ** 3;
    const above = 0.02 - endVolume;
    const height = above / (Math.PI * 0.15 ** 2);
    expect(result.contentsCentreM).toBeCloseTo(
      (endVolume * 0.15 * (5 / 8) + above * (0.15 + height / 2)) / 0.02,
      12,
    );
  });

  it('has the masses of geometry.vessel, and its centre between those of its parts', () => {
    const inputs = { flangeOuterDiameterM: 0.4, flangeHeightM: 0.04, fillVolumeM3: 0.01 };
    const result = centres({ ...inputs, contentsDensityKgPerM3: 900 });
    const masses = evaluate(vessel, { ...base, ...inputs });
    if (!masses.ok) throw new Error(masses.error.message);
    const { shellMassKg, endMassKg, flangeMassKg, massKg } = masses.value;
    expect(result.emptyMassKg).toBeCloseTo(massKg, 9);
    expect(result.emptyCentreM * massKg).toBeCloseTo(
      shellMassKg * result.shellCentreM +
        endMassKg * result.endCentreM +
        flangeMassKg * result.flangeCentreM!,
      9,
    );
    expect(result.contentsMassKg).toBeCloseTo(9, 12);
    expect(result.filledCentreM! * result.filledMassKg!).toBeCloseTo(
      result.emptyCentreM * massKg + result.contentsCentreM! * 9,
      9,
    );
  });

  it('counts a flat end as a disc below', () => {
    expect(centres({ form: 'flat', endThicknessM: 0.03 }).endCentreM).toBe(-0.015);
    expect(centres({ form: 'flat', fillVolumeM3: 0.005 }).contentsCentreM).toBeCloseTo(
      0.005 / (Math.PI * 0.15 ** 2) / 2,
      12,
    );
  });

  it('takes no place for no contents', () => {
    expect(centres({ fillVolumeM3: 0 })).toMatchObject({ contentsMassKg: 0 });
    expect(centres({ fillVolumeM3: 0 }).filledCentreM).toBeCloseTo(centres({}).emptyCentreM, 12);
  });

  it('moves the contents up while they rise', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...endForms),
        fc.double({ min: 0.001, max: 0.5, noNaN: true }),
        fc.double({ min: 1.01, max: 2, noNaN: true }),
        (form, share, more) => {
          const { innerVolumeM3 } = (() => {
            const outcome = evaluate(vessel, { ...base, form, coneHalfAngleDeg: 40 });
            if (!outcome.ok) throw new Error(outcome.error.message);
            return outcome.value;
          })();
          const at = (part: number) =>
            centres({ form, coneHalfAngleDeg: 40, fillVolumeM3: Math.min(part, 1) * innerVolumeM3 })
              .contentsCentreM!;
          expect(at(share * more)).toBeGreaterThan(at(share));
        },
      ),
    );
  });

  it('refuses what geometry.vessel refuses', () => {
    expect(evaluate(vesselCentreOfGravity, { ...base, form: 'conical' })).toMatchObject({
      ok: false,
      error: { code: 'CALC_INVALID_INPUT', field: 'coneHalfAngleDeg' },
    });
  });

  it('shows each centre and the mean', () => {
    const evidence = evaluateWithEvidence(vesselCentreOfGravity, {
      ...base,
      flangeOuterDiameterM: 0.4,
      flangeHeightM: 0.04,
      fillVolumeM3: 0.01,
    });
    expect(evidence.ok && evidence.value.steps.map(({ symbol }) => symbol)).toEqual([
      'z_s',
      'z_e',
      'z_f',
      'z_c',
      'z',
    ]);
  });
});

describe('the jacket', () => {
  const jacket = (inputs: object) => {
    const outcome = evaluate(vessel, { ...base, ...inputs });
    if (!outcome.ok) throw new Error(outcome.error.message);
    return outcome.value;
  };

  it('covers the wetted surface where nothing else is said', () => {
    const { jacketAreaM2, wettedAreaM2 } = jacket({ fillVolumeM3: 0.02 });
    expect(jacketAreaM2).toBe(wettedAreaM2);
  });

  it('ends at its top, in the cylinder or in the end', () => {
    // Hemisphere 2π R², cylinder above it; a cap 2π R h.
    expect(jacket({ fillVolumeM3: 0.02, jacketTopM: 0.2 }).jacketAreaM2).toBeCloseTo(
      2 * Math.PI * 0.15 ** 2 + Math.PI * 0.3 * 0.05,
      12,
    );
    expect(jacket({ fillVolumeM3: 0.02, jacketTopM: 0.1 }).jacketAreaM2).toBeCloseTo(
      2 * Math.PI * 0.15 * 0.1,
      12,
    );
    expect(jacket({ fillVolumeM3: 0.001, jacketTopM: 0.4 }).jacketAreaM2).toBe(
      jacket({ fillVolumeM3: 0.001 }).wettedAreaM2,
    );
  });
});

describe('geometry.centreOfGravity', () => {
  const whole = (
    inputs: Parameters<typeof evaluate<typeof centreOfGravity.inputs, typeof centreOfGravity.outputs>>[1],
  ) => {
    const outcome = evaluate(centreOfGravity, inputs);
    if (!outcome.ok) throw new Error(outcome.error.message);
    return outcome.value;
  };

  it('is the mean of the parts by mass', () => {
    // Two lumps of 1 and 3 kg: three quarters of the way to the heavier.
    const result = whole({
      parts: [
        { name: 'frame', massKg: 1, heightM: 0, xM: 0, yM: 4 },
        { name: 'vessel', massKg: 3, heightM: 2, xM: 0.4, yM: 0 },
      ],
    });
    expect(result).toMatchObject({ massKg: 4, heightM: 1.5, yM: 1 });
    expect(result.xM).toBeCloseTo(0.3, 12);
    expect(result.eccentricityM).toBeCloseTo(Math.hypot(0.3, 1), 12);
    expect(result.tippingAngleDeg).toBeUndefined();
  });

  it('tips at 45° where it is as high as its foot is wide, and sooner off the middle', () => {
    const part = { name: 'system', massKg: 200, heightM: 0.6 };
    expect(whole({ parts: [part], supportRadiusM: 0.6 }).tippingAngleDeg).toBeCloseTo(45, 12);
    expect(whole({ parts: [{ ...part, xM: 0.3 }], supportRadiusM: 0.6 }).tippingAngleDeg).toBeCloseTo(
      (Math.atan(0.5) * 180) / Math.PI,
      12,
    );
    expect(whole({ parts: [{ ...part, xM: -0.7 }], supportRadiusM: 0.6 }).tippingAngleDeg).toBeLessThan(0);
  });

  it('has no centre without mass', () => {
    expect(evaluate(centreOfGravity, { parts: [{ name: 'nothing', massKg: 0, heightM: 1 }] })).toMatchObject({
      ok: false,
      error: { code: 'CALC_OUT_OF_RANGE', field: 'parts' },
    });
  });

  it('stays within its parts, and moves with them', () => {
    const lump = fc.record({
      name: fc.constant('part'),
      massKg: fc.double({ min: 1e-3, max: 1e5, noNaN: true }),
      heightM: fc.double({ min: -10, max: 10, noNaN: true }),
      xM: fc.double({ min: -10, max: 10, noNaN: true }),
    });
    fc.assert(
      fc.property(
        fc.array(lump, { minLength: 1, maxLength: 20 }),
        fc.double({ min: -5, max: 5, noNaN: true }),
        (parts, shift) => {
          const { heightM } = whole({ parts });
          expect(heightM).toBeGreaterThanOrEqual(Math.min(...parts.map((p) => p.heightM)) - 1e-9);
          expect(heightM).toBeLessThanOrEqual(Math.max(...parts.map((p) => p.heightM)) + 1e-9);
          const moved = whole({ parts: parts.map((p) => ({ ...p, heightM: p.heightM + shift })) });
          expect(moved.heightM).toBeCloseTo(heightM + shift, 9);
        },
      ),
    );
  });

  it('shows its steps', () => {
    const evidence = evaluateWithEvidence(centreOfGravity, {
      parts: [{ name: 'frame', massKg: 1, heightM: 1 }],
      supportRadiusM: 1,
    });
    expect(evidence.ok && evidence.value.steps.map(({ symbol }) => symbol)).toEqual([
      'z_s',
      'x_s',
      'y_s',
      'φ',
    ]);
  });
});
