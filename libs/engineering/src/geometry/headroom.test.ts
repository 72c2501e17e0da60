import { describe, expect, it } from 'vitest';
import { evaluate } from '../calculation.js';
import { headroom } from './headroom.js';

const base = {
  floorToRimM: 1.1,
  coverStackHeightM: 0.7,
  internalsLengthM: 0.6,
  ceilingHeightM: 2.6,
};

describe('geometry.headroom', () => {
  it('adds the stroke where the cover rises', () => {
    const outcome = evaluate(headroom, { ...base, moving: 'cover rises', liftStrokeM: 0.65 });
    if (!outcome.ok) throw new Error(outcome.error.message);
    expect(outcome.value.strokeNeededM).toBeCloseTo(0.7, 12);
    expect(outcome.value.heightNeededM).toBeCloseTo(2.5, 12);
    expect(outcome.value.headroomReserveM).toBeCloseTo(0.1, 12);
    expect(outcome.value.strokeReserveM).toBeCloseTo(-0.05, 12);
    expect(outcome.value.floorReserveM).toBeUndefined();
  });

  it('needs no more height where the vessel lowers, but room above the floor', () => {
    const outcome = evaluate(headroom, {
      ...base,
      moving: 'vessel lowers',
      floorToBottomM: 0.5,
      clearanceM: 0.05,
    });
    if (!outcome.ok) throw new Error(outcome.error.message);
    expect(outcome.value.heightNeededM).toBeCloseTo(1.8, 12);
    expect(outcome.value.floorReserveM).toBeCloseTo(-0.15, 12);
  });

  it('refuses a length below zero', () => {
    expect(evaluate(headroom, { ...base, moving: 'cover rises', internalsLengthM: -1 })).toMatchObject({
      ok: false,
      error: { code: 'CALC_OUT_OF_RANGE', field: 'internalsLengthM' },
    });
  });
});
