import { designStressAt, materialDensity, materialGrade } from '@flangewise/engineering';
import type { ItemOf } from '@flangewise/model';
import { describe, expect, test } from 'vitest';
import { completeVessel } from './complete-vessel.js';
import { demoCatalogue } from './demo-catalogue.js';
import { permissibleExternalPressurePa } from './external-pressure.js';
import { itemsOfSlot } from './find-items.js';
import { vesselDesigns } from './generate/generated-data.js';
import { permissiblePressurePa } from './internal-pressure.js';
import { preferredPressures } from './preferred-pressure.js';
import { families, standardEnds } from './range.js';
import type { VesselDesign } from './vessel-design.js';

type Vessel = ItemOf<'vessel'>;

const vessels = itemsOfSlot(demoCatalogue, 'vessel');
const designOf = (vessel: Vessel): VesselDesign => vesselDesigns.find((d) => d.id === vessel.id)!;
const named = vessels.map((v) => [`${v.id} ${v.name}`, v] as const);
const value = (outcome: ReturnType<typeof permissiblePressurePa>): number => {
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
};

/**
 * Volume and depth of an end as fractions of D³ and D. Torispherical by the formulas that DIN 28011 and DIN 28013
 * give as 0.1 (D_a − 2 s)³ and 0.1298 (D_a − 2 s)³ (from memory, unverified); the others are solid geometry.
 */
const endVolume: Readonly<Record<Vessel['geometry']['endForm'], { share: number; within: number }>> = {
  flat: { share: 0, within: 1e-9 },
  hemispherical: { share: Math.PI / 12, within: 1e-6 },
  '2:1 ellipsoidal': { share: Math.PI / 24, within: 1e-6 },
  'torispherical DIN 28011': { share: 0.1, within: 0.04 },
  'torispherical DIN 28013': { share: 0.1298, within: 0.04 },
};

describe('every vessel of the range', () => {
  test.each(named)('%s holds its volume by geometry', (_, { geometry, innerVolumeL, nominalVolumeL }) => {
    const { innerDiameterM: D, cylinderLengthM: L, endForm } = geometry;
    const { share, within } = endVolume[endForm];
    const end = share * D ** 3 * 1000;
    const cylinder = (Math.PI / 4) * D * D * L * 1000;
    expect(Math.abs(innerVolumeL - cylinder - end)).toBeLessThanOrEqual(within * end + 1e-4 * innerVolumeL);
    expect(innerVolumeL / nominalVolumeL).toBeGreaterThanOrEqual(0.999);
    expect(innerVolumeL / nominalVolumeL).toBeLessThanOrEqual(1.05);
  });

  test.each(named)(
    '%s is as deep as cylinder and end',
    (_, { geometry, depthM, smallestFillL, innerVolumeL }) => {
      const below = depthM - geometry.cylinderLengthM;
      const [least, most] = geometry.endForm === 'flat' ? [0, 1e-9] : [0.18, 0.51];
      expect(below).toBeGreaterThanOrEqual(least * geometry.innerDiameterM - 1e-6);
      expect(below).toBeLessThanOrEqual(most * geometry.innerDiameterM + 1e-6);
      expect(smallestFillL).toBeLessThan(0.85 * innerVolumeL);
    },
  );

  test.each(named)(
    '%s weighs at least its walls, and little more than walls, rim and jacket',
    (_, vessel) => {
      const { geometry: g, carrier, material, liningThicknessM = 0, depthM, jacket, massKg } = vessel;
      const density = materialDensity(carrier ?? material);
      if (!density.ok) throw new Error(density.error.message);
      const Di = g.innerDiameterM + 2 * liningThicknessM;
      const De = Di + 2 * g.wallThicknessM;
      const rho = density.value.value;
      const shell = rho * (Math.PI / 4) * (De ** 2 - Di ** 2) * g.cylinderLengthM;
      const rim = rho * (Math.PI / 4) * (g.flangeOuterDiameterM ** 2 - De ** 2) * g.flangeHeightM;
      // No end has less surface than a disc or more than a hemisphere; the outer surface counts from above.
      const disc = rho * (Math.PI / 4) * Di ** 2 * g.endThicknessM;
      const hemisphere = rho * (Math.PI / 2) * (Di + 2 * g.endThicknessM) ** 2 * g.endThicknessM;
      const liningDensity = materialDensity(material);
      if (!liningDensity.ok) throw new Error(liningDensity.error.message);
      const lining = liningDensity.value.value * liningThicknessM * Math.PI * De * (depthM + De / 4);
      const shellOfJacket =
        jacket === null ? 0 : 8000 * 0.008 * Math.PI * (De + 2 * jacket.gapM) * (depthM + De / 2);
      expect(massKg).toBeGreaterThanOrEqual((shell + rim + disc) * 0.9999);
      expect(massKg).toBeLessThanOrEqual((shell + rim + hemisphere + lining + shellOfJacket) * 1.05);
    },
  );

  test.each(named)('%s is sold at the highest pressure that its wall carries', (_, vessel) => {
    const carried = value(permissiblePressurePa(designOf(vessel))) / 1e5;
    const ps = vessel.rating!.maxPressurePaGauge / 1e5;
    expect(ps).toBeLessThanOrEqual(carried);
    if (vessel.construction === 'glass') {
      expect(ps).toBe(Math.floor(carried));
      expect(ps).toBeLessThan(12);
    } else {
      expect(preferredPressures).toContain(ps);
      const end = families.find((f) => f.name === vessel.family)!.maxPressureBarGauge;
      const next = preferredPressures.find((p) => p > ps);
      if (next !== undefined && next <= end) expect(next).toBeGreaterThan(carried);
      expect(ps * 1e5).toBeLessThanOrEqual(standardEnds.maxPressurePaGauge);
    }
    expect(vessel.rating!.maxTemperatureK).toBeLessThanOrEqual(standardEnds.maxTemperatureK);
    expect(vessel.name).toContain(`PS ${String(ps)}`);
  });

  test.each(named.filter(([, v]) => v.construction !== 'glass'))(
    '%s carries PS by the membrane formula of EN 13445-3 7.4.2',
    (_, vessel) => {
      const { geometry: g, liningThicknessM = 0, corrosionAllowanceM: c, carrier, material, rating } = vessel;
      const stress = designStressAt(carrier ?? material, rating!.maxTemperatureK);
      if (!stress.ok) throw new Error(stress.error.message);
      const e = g.wallThicknessM - c;
      const Di = g.innerDiameterM + 2 * liningThicknessM + 2 * c;
      const thin = (2 * stress.value.stressPa * e) / (Di + e);
      // Limits are compared to twelve digits.
      expect(rating!.maxPressurePaGauge).toBeLessThanOrEqual(thin * (1 + 1e-12));
    },
  );

  test.each(named)('%s stands its jacket, and full vacuum with it where it says so', (_, vessel) => {
    const outside = value(permissibleExternalPressurePa(designOf(vessel)));
    const jacket = vessel.jacket?.maxPressurePaGauge ?? 0;
    expect(outside).toBeGreaterThanOrEqual(jacket);
    const stands = outside >= 101_325 + jacket;
    expect(vessel.rating!.vacuum).toBe(stands && vessel.construction !== 'lined');
  });

  test.each(named)('%s is not used below the temperature that its material stands', (_, vessel) => {
    for (const material of [vessel.carrier ?? vessel.material, vessel.material]) {
      const grade = materialGrade(material);
      if (!grade.ok) throw new Error(grade.error.message);
      const { service } = grade.value;
      if (service?.minC !== undefined)
        expect(vessel.rating!.minTemperatureK).toBeGreaterThanOrEqual(service.minC + 273.15);
      if (service?.maxC !== undefined)
        expect(vessel.rating!.maxTemperatureK).toBeLessThanOrEqual(service.maxC + 273.15);
    }
  });
});

describe('a vessel from its design', () => {
  const design = vesselDesigns.find((d) => d.construction === 'metal' && d.jacket !== null)!;

  test('a material without design data carries no rating', () => {
    const outcome = completeVessel({ ...design, material: 'tantalum' });
    expect(outcome).toMatchObject({ ok: false, error: { code: 'CALC_MISSING_PROPERTY' } });
  });

  test('a lining takes no load: the carrier alone decides', () => {
    const lined = { ...design, construction: 'lined' as const, material: 'PTFE', carrier: design.material };
    const thin = completeVessel({ ...lined, liningThicknessM: 0.002 });
    const thick = completeVessel({ ...lined, liningThicknessM: 0.02 });
    if (!thin.ok || !thick.ok) throw new Error('both can be built');
    expect(thick.value.rating!.maxPressurePaGauge).toBeLessThan(thin.value.rating!.maxPressurePaGauge);
    expect(thin.value.rating!.vacuum).toBe(false);
  });

  test('a wall too thin for its jacket is refused with both pressures', () => {
    const outcome = completeVessel({
      ...design,
      jacket: { maxPressurePaGauge: 4e7, gapM: 0.01 },
    });
    expect(outcome).toMatchObject({ ok: false, error: { field: 'jacket.maxPressurePaGauge', given: 4e7 } });
  });

  test('a wall that carries less than the lowest pressure is refused', () => {
    const thin = { ...design.geometry, wallThicknessM: 0.0002 };
    const outcome = completeVessel({ ...design, jacket: null, corrosionAllowanceM: 0, geometry: thin });
    expect(outcome).toMatchObject({ ok: false, error: { code: 'CALC_OUT_OF_RANGE' } });
  });

  // Glass tube property sheet quoting EN 1595: 7 N/mm², outer diameter 100 mm, wall 3 mm: 4.33 bar.
  test('a glass vessel of 94 mm bore and 3 mm wall is sold for 4 bar', () => {
    const glass = vesselDesigns.find((d) => d.construction === 'glass' && d.jacket === null)!;
    const geometry = {
      ...glass.geometry,
      innerDiameterM: 0.094,
      wallThicknessM: 0.003,
      endThicknessM: 0.003,
    };
    const outcome = completeVessel({ ...glass, geometry });
    expect(outcome.ok && outcome.value.rating!.maxPressurePaGauge).toBe(4e5);
    expect(value(permissiblePressurePa({ ...glass, geometry })) / 1e5).toBeCloseTo(4.33, 1);
  });
});
