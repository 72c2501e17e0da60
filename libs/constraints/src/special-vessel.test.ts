import { demoCatalogue } from '@flangewise/catalogue';
import { designStressAt, evaluate, materialDensity, specialVessel } from '@flangewise/engineering';
import { describe, expect, it } from 'vitest';
import { rangeOf } from './range.js';
import { makeSpecialVessel } from './special-vessel.js';

const range = rangeOf(demoCatalogue, { deliveryDays: () => 0 });
const steel = { set: 0, volumeL: 5, pressurePaGauge: 1e7, maxTemperatureK: 473.15, material: '1.4404' };

const made = (changes: Partial<typeof steel> & { readonly innerDiameterM?: number }, of = range) => {
  const outcome = makeSpecialVessel({ ...steel, ...changes }, of);
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value.item;
};

describe('a special vessel', () => {
  it('goes as cold as its material, from memory: EN 13445-2 annex B for austenitic steel, practice for titanium', () => {
    expect(made({}).rating?.minTemperatureK).toBeCloseTo(77.15, 9);
    expect(made({ material: 'titanium grade 2' }).rating?.minTemperatureK).toBeCloseTo(213.15, 9);
  });

  it('stands full vacuum where its walls carry the atmosphere from outside, and only there', () => {
    expect(made({}).rating?.vacuum).toBe(true);
    const wide = made({ innerDiameterM: 0.8, volumeL: 900, pressurePaGauge: 5e4 });
    expect(wide.geometry.wallThicknessM).toBeLessThan(0.002);
    expect(wide.rating?.vacuum).toBe(false);
  });

  it('has walls that carry its pressure with the corrosion allowance gone', () => {
    const corroding = demoCatalogue.items.map((item) =>
      item.slot === 'vessel' ? { ...item, corrosionAllowanceM: 0.001 } : item,
    );
    const wide = made(
      { innerDiameterM: 0.6, volumeL: 150, pressurePaGauge: 2e6 },
      rangeOf({ ...demoCatalogue, items: corroding }, { deliveryDays: () => 0 }),
    );
    const stress = designStressAt(steel.material, steel.maxTemperatureK);
    const density = materialDensity(steel.material);
    if (!stress.ok || !density.ok) throw new Error('1.4404 is on file');
    const walls = evaluate(specialVessel, {
      code: 'EN 13445-3',
      innerDiameterM: 0.6,
      volumeM3: 0.15,
      form: '2:1 ellipsoidal',
      pressurePaGauge: 2e6,
      allowableStressPa: stress.value.stressPa,
      densityKgPerM3: density.value.value,
      corrosionAllowanceM: wide.corrosionAllowanceM,
    });
    expect(wide.corrosionAllowanceM).toBe(0.001);
    expect(walls.ok && walls.value.wallThicknessM).toBe(wide.geometry.wallThicknessM);
    expect(walls.ok && walls.value.endThicknessM).toBe(wide.geometry.endThicknessM);
  });
});
