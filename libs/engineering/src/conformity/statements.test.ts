import { describe, expect, it } from 'vitest';
import { evaluateWithEvidence } from '../calculation.js';
import { assertEvidence, samples } from '../reference-cases.js';
import { conformityCalculations } from './conformity-calculations.js';
import { directives } from './directives.js';
import { greatBritain } from './great-britain.js';
import { unitedStates } from './united-states.js';

const valueOf = <T>(
  outcome:
    | { readonly ok: true; readonly value: T }
    | { readonly ok: false; readonly error: { readonly message: string } },
): T => {
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
};

it.each(samples('conformity').map((sample) => [sample.calculation, sample] as const))(
  '%s shows its evidence',
  (_id, sample) => {
    assertEvidence(conformityCalculations, sample);
  },
);

describe('the statement for the United States', () => {
  const told = (change: object) => {
    const { outputs, steps } = valueOf(
      evaluateWithEvidence(unitedStates, {
        ...{ innerDiameterM: 0.3, maxPressurePaGauge: 20e5, volumeL: 30 },
        ...change,
      }),
    );
    return {
      ...(outputs as { reason: string; inScope: boolean; smallVessel: boolean; demands: string[] }),
      steps,
    };
  };

  it('gives diameter and pressure in the units of the drawing', () => {
    expect(told({ innerDiameterM: 0.152 }).reason).toContain('inside diameter 152 mm, not above 152 mm');
    expect(told({ maxPressurePaGauge: 1e5 }).reason).toContain('pressure 1 bar, not above 15 psi');
    expect(told({}).reason).toBe('inside diameter 300 mm and pressure 20 bar lie inside U-1');
    expect(told({}).steps[0]).toMatchObject({ value: 'inside', note: told({}).reason });
  });

  // 15 psi = 103 421.4 Pa, 600 psi = 4 136 854 Pa, 3000 psi = 20 684 272 Pa (1 psi = 6894.757 293 168 Pa);
  // 1.5 ft³ = 42.475 27 L.
  it.each([
    ['at 15 psi', { maxPressurePaGauge: 15 * 6894.757293168 }, { inScope: false }],
    ['at 600 psi', { maxPressurePaGauge: 600 * 6894.757293168 }, { smallVessel: true }],
    ['above 600 psi', { maxPressurePaGauge: 600.1 * 6894.757293168 }, { smallVessel: false }],
    ['at 1.5 ft³ and 600 psi', { volumeL: 42.475, maxPressurePaGauge: 41e5 }, { smallVessel: true }],
  ])('stays below the limit %s', (_words, change, expected) => {
    expect(told(change)).toMatchObject(expected);
  });

  it('lists what it asks for, and nothing else', () => {
    expect(told({}).demands).toHaveLength(4);
    expect(told({ quickActuatingClosure: true, maxPressurePaGauge: 210e5 }).demands).toHaveLength(6);
    expect(told({ maxPressurePaGauge: 3000 * 6894.757293168 }).demands).toHaveLength(4);
    // Outside the scope neither closure nor pressure adds a demand.
    const narrow = { innerDiameterM: 0.1, quickActuatingClosure: true, maxPressurePaGauge: 300e5 };
    expect(told(narrow).demands).toHaveLength(2);
    expect(told(narrow).demands[1]).toContain('where the authority asks');
  });
});

describe('the statement for Great Britain', () => {
  const told = (change: object) =>
    valueOf(
      evaluateWithEvidence(greatBritain, {
        ...{ category: 'III', maxPressureBarGauge: 10, volumeL: 25, contents: 'gas' },
        ...change,
      } as Parameters<
        typeof evaluateWithEvidence<typeof greatBritain.inputs, typeof greatBritain.outputs>
      >[1]),
    );

  it('lists the duties of maker and user, each where it holds', () => {
    const demands = (change: object) => told(change).outputs['demands'] as string[];
    expect(demands({})).toHaveLength(3);
    expect(demands({ volumeL: 20 })).toHaveLength(2);
    expect(demands({ contents: 'liquid' })).toHaveLength(1);
    expect(demands({ contents: 'liquid', category: 'Art4(3)' })).toEqual([]);
    expect(demands({ category: 'Art4(3)', volumeL: 20 })[0]).toContain('Safe operating limits');
  });

  it('counts steam as a relevant fluid at any pressure, other gas above 0.5 bar', () => {
    const relevant = (change: object) => told(change).outputs['relevantFluid'];
    expect(relevant({ contents: 'steam', maxPressureBarGauge: 0.1 })).toBe(true);
    expect(relevant({ maxPressureBarGauge: 0.1 })).toBe(false);
  });

  it('shows the product that decides', () => {
    expect(told({}).steps).toMatchObject([{ substituted: 'gas, PS V = 250 bar·L', value: 'needed' }]);
  });
});

describe('the acts of the European Union', () => {
  const told = (change: object) =>
    valueOf(
      evaluateWithEvidence(directives, {
        ...{ placedOnMarket: '2026-11-01', pressureCategory: 'III', poweredMotion: false, electrical: true },
        ...change,
      } as Parameters<typeof evaluateWithEvidence<typeof directives.inputs, typeof directives.outputs>>[1]),
    );
  const reason = (change: object, act: string) =>
    (told(change).outputs['laws'] as { law: string; reason: string; applies: boolean }[]).find(({ law }) =>
      law.includes(act),
    )!;

  it('are shown each, with whether it applies', () => {
    const { steps, outputs } = told({ alternatingVoltageV: 230 });
    expect(steps.map(({ value }) => value)).toEqual(['yes', 'no', 'no', 'yes', 'yes']);
    expect(outputs['statement']).toBe(
      'Pressure Equipment Directive 2014/68/EU; Low Voltage Directive 2014/35/EU; EMC Directive 2014/30/EU. To be checked against the text in force.',
    );
  });

  it('say from which day the machinery law is, and what the zone is', () => {
    const moving = { poweredMotion: true };
    expect(reason(moving, 'Machinery').reason).toContain('2026-11-01, before 20 January 2027');
    expect(reason({ ...moving, placedOnMarket: '2027-01-20' }, 'Machinery').reason).toContain(
      'from 20 January 2027',
    );
    expect(reason({ zone: '21' }, 'ATEX').reason).toContain('zone 21');
    expect(reason({}, 'ATEX').reason).toBe('no explosive atmosphere declared');
  });

  it.each([
    // 2014/35/EU article 1: 50 to 1000 V AC, 75 to 1500 V DC, the ends included.
    [{ alternatingVoltageV: 1000 }, true],
    [{ directVoltageV: 1500 }, true],
    [{ directVoltageV: 74 }, false],
    [{ directVoltageV: 24, alternatingVoltageV: 24 }, false],
    [{}, false],
  ])('hold low voltage to %o: %s', (voltages, applies) => {
    expect(reason(voltages, 'Low Voltage').applies).toBe(applies);
  });

  it('keep sound engineering practice under the pressure directive, whatever else applies', () => {
    expect(reason({ pressureCategory: 'Art4(3)', alternatingVoltageV: 230 }, 'Pressure').applies).toBe(true);
  });
});
