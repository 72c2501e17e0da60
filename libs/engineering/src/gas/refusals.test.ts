import type { CalculationError, Outcome } from '@flangewise/model';
import { expect, it } from 'vitest';
import { evaluate } from '../calculation.js';
import { gasDensity } from './gas-density.js';
import { dosedAmount } from './dosed-amount.js';
import { uptakeReservoir } from './uptake-reservoir.js';

const room = { temperatureK: 293.15 };

const refused = (outcome: Outcome<unknown, CalculationError>): Partial<CalculationError> =>
  outcome.ok ? {} : outcome.error;

it('gives nothing off where the pressure does not fall, and takes a pressure that stays', () => {
  const given = { gas: 'nitrogen', reservoirVolumeM3: 0.01, startPressurePaAbs: 5e6, ...room };
  expect(refused(evaluate(dosedAmount, { ...given, endPressurePaAbs: 5.1e6 }))).toMatchObject({
    code: 'CALC_OUT_OF_RANGE',
    field: 'endPressurePaAbs',
    given: 5.1e6,
  });
  expect(evaluate(dosedAmount, { ...given, endPressurePaAbs: 5e6 })).toMatchObject({
    ok: true,
    value: { amountMol: 0 },
  });
});

// Carbon dioxide at 20 °C condenses at 57.3 bar (NIST Chemistry WebBook).
it('says that the gas condenses before anything is given off', () => {
  const ends = { startPressurePaAbs: 7e6, endPressurePaAbs: 1e6 };
  const error = { code: 'CALC_OUT_OF_RANGE', field: 'startPressurePaAbs', given: 7e6 };
  const dosed = evaluate(dosedAmount, { gas: 'carbon dioxide', reservoirVolumeM3: 0.01, ...room, ...ends });
  expect(refused(dosed)).toMatchObject(error);
  const taken = evaluate(uptakeReservoir, { gas: 'carbon dioxide', uptakeMol: 1, ...room, ...ends });
  expect(refused(taken)).toMatchObject(error);
});

it('asks for a larger reservoir where it would have to be filled too often, and says how large', () => {
  const given = { gas: 'hydrogen', uptakeMol: 1e4, startPressurePaAbs: 5e6, endPressurePaAbs: 1e6, ...room };
  const error = refused(evaluate(uptakeReservoir, { ...given, reservoirVolumeM3: 1e-6 }));
  expect(error).toMatchObject({ code: 'CALC_OUT_OF_RANGE', field: 'reservoirVolumeM3', given: 1e-6 });
  const least = Number(/at least ([\d.e-]+) m3/.exec(String(error.allowed))?.[1]);
  // What is allowed is accepted, and a little less is not.
  expect(evaluate(uptakeReservoir, { ...given, reservoirVolumeM3: least * 1.001 }).ok).toBe(true);
  expect(evaluate(uptakeReservoir, { ...given, reservoirVolumeM3: least * 0.99 }).ok).toBe(false);
});

// All three are liquids there: their vapour pressures are about 0.22, 1.0 and 1.0 bar (NIST Chemistry WebBook).
it.each([
  ['n-hexane', 3e6, 300],
  ['ethanol', 1e6, 350],
  ['acetone', 2e6, 330],
])('takes no liquid for a gas: %s at %d Pa and %d K', (gas, pressurePaAbs, temperatureK) => {
  expect(refused(evaluate(gasDensity, { gas, pressurePaAbs, temperatureK }))).toMatchObject({
    code: expect.stringMatching(/^CALC_(OUT_OF_RANGE|MISSING_PROPERTY)$/) as string,
  });
});

it.each([
  ['hydrogen', 1e5, 293.15],
  ['nitrogen', 1e5, 293.15],
  ['propane', 1e5, 320],
  ['n-hexane', 1e4, 400],
])('is nearly ideal at low pressure: %s at %d Pa and %d K', (gas, pressurePaAbs, temperatureK) => {
  const outcome = evaluate(gasDensity, { gas, pressurePaAbs, temperatureK });
  expect(outcome.ok).toBe(true);
  if (!outcome.ok) return;
  const ideal = pressurePaAbs / (8.314462618 * temperatureK);
  expect(outcome.value.molarDensityMolPerM3 / ideal).toBeGreaterThan(0.98);
  expect(outcome.value.molarDensityMolPerM3 / ideal).toBeLessThan(1.05);
});
