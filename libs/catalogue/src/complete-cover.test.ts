import { designStressAt, materialDensity } from '@flangewise/engineering';
import { describe, expect, test } from 'vitest';
import { completeCover, permissibleCoverPressurePa } from './complete-cover.js';
import { demoCatalogue } from './demo-catalogue.js';
import { itemsOfSlot } from './find-items.js';
import { coverDesigns } from './generate/generated-data.js';
import { portDistanceM } from './port-pattern.js';
import { preferredPressures } from './preferred-pressure.js';

const covers = itemsOfSlot(demoCatalogue, 'cover');
const designOf = (id: string) => coverDesigns.find((d) => d.id === id)!;
const named = covers.map((c) => [`${c.id} ${c.name}`, c] as const);

describe('every cover of the range', () => {
  test.each(named)('%s is sold at the highest pressure that its thickness carries', (_, cover) => {
    const carried = permissibleCoverPressurePa(designOf(cover.id));
    if (!carried.ok) throw new Error(carried.error.message);
    const ps = cover.rating!.maxPressurePaGauge / 1e5;
    expect(preferredPressures).toContain(ps);
    expect(ps * 1e5).toBeLessThanOrEqual(carried.value);
    const next = preferredPressures.find((p) => p > ps);
    if (next !== undefined) expect(next * 1e5).toBeGreaterThan(carried.value);
    expect(cover.name).toContain(`PS ${String(ps)}`);
  });

  // Timoshenko, Theory of Plates and Shells, 2nd ed., §16: simply supported circular plate without hole,
  // σ = 3 (3 + ν)/32 · p D²/e². Openings and the overhang to the bolts only take away from it.
  test.each(named)('%s stays below a plain plate on its seal circle', (_, cover) => {
    const { sealDiameterM: G, carrier, material, maxTemperatureK } = designOf(cover.id);
    const stress = designStressAt(carrier ?? material, maxTemperatureK);
    if (!stress.ok) throw new Error(stress.error.message);
    const plain = (stress.value.stressPa * cover.thicknessM ** 2 * 32) / (3 * 3.3 * G ** 2);
    expect(cover.rating!.maxPressurePaGauge).toBeLessThan(plain);
  });

  test.each(named)('%s weighs what its plate weighs', (_, cover) => {
    const { outerDiameterM, carrier, material } = designOf(cover.id);
    const density = materialDensity(carrier ?? material);
    if (!density.ok) throw new Error(density.error.message);
    const full = density.value.value * (Math.PI / 4) * outerDiameterM ** 2 * cover.thicknessM;
    expect(cover.massKg).toBeLessThan(full);
    expect(cover.massKg).toBeGreaterThan(0.85 * full);
  });

  test.each(named)('%s has ports that leave metal between each other, the rim and the shaft', (_, cover) => {
    const { bushingBoreM, sealDiameterM, loadCircleM, outerDiameterM } = designOf(cover.id);
    const least = cover.bore < 63 ? 0.002 : 0.003;
    cover.ports.forEach((port, index) => {
      expect(port.boltCircleM / 2 + port.diameterM / 2).toBeLessThan(cover.bore / 2000 - 0.0009);
      expect(port.boltCircleM / 2 - port.diameterM / 2).toBeGreaterThan(bushingBoreM / 2 + 0.0009);
      for (const other of cover.ports.slice(index + 1)) {
        expect(portDistanceM(port, other)).toBeGreaterThan((port.diameterM + other.diameterM) / 2 + least);
      }
    });
    expect(sealDiameterM).toBeGreaterThan(cover.bore / 1000);
    expect(loadCircleM).toBeGreaterThan(sealDiameterM);
    expect(outerDiameterM).toBeGreaterThan(loadCircleM);
    expect(new Set(cover.ports.map((p) => p.name)).size).toBe(cover.ports.length);
  });
});

describe('a cover from its design', () => {
  const design = coverDesigns[0]!;

  test('without ports it carries more, twice as thick four times as much', () => {
    const carried = (change: Partial<typeof design>): number => {
      const outcome = permissibleCoverPressurePa({ ...design, ...change });
      if (!outcome.ok) throw new Error(outcome.error.message);
      return outcome.value;
    };
    const one = carried({ ports: design.ports.slice(0, 1) });
    expect(one).toBeGreaterThan(carried({}));
    expect(carried({ ports: [] })).toBeGreaterThan(one);
    expect(carried({ ports: [] })).toBeLessThan(Infinity);
    expect(carried({ thicknessM: 2 * design.thicknessM }) / carried({})).toBeCloseTo(4, 6);
  });

  test('a plate too thin for the lowest pressure is refused', () => {
    expect(completeCover({ ...design, thicknessM: 0.0005 })).toMatchObject({
      ok: false,
      error: { code: 'CALC_OUT_OF_RANGE', field: 'thicknessM' },
    });
  });
});
