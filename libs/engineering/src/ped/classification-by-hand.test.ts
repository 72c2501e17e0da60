import { describe, expect, it } from 'vitest';
import { evaluate, evaluateWithEvidence } from '../calculation.js';
import { stepFaults } from '../redone-by-hand.js';
import { type PedCategory, classifyVessel, type VesselPoint } from './annex-ii-vessels.js';
import { assembly } from './assembly.js';
import type { ChamberFluid } from './classify-chamber.js';
import { conformityOf, dutiesOf } from './conformity-modules.js';
import { fluidGroup } from './fluid-group.js';
import { fluidGroupOfHazardClass } from './fluid-group-of-hazard-class.js';
import { testPressure } from './test-pressure.js';
import { vesselAssessment } from './vessel-assessment.js';
import { vesselCategory } from './vessel-category.js';

const valueOf = <T>(
  outcome:
    | { readonly ok: true; readonly value: T }
    | { readonly ok: false; readonly error: { readonly message: string } },
): T => {
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
};

const chamber = (fluids: readonly ChamberFluid[], temperatureC: number, change: object = {}) => ({
  volumeL: 20,
  maxPressureBarGauge: 6,
  maxTemperatureK: temperatureC + 273.15,
  fluids: fluids.map((fluid) => ({ ...fluid })),
  ...change,
});

const assessed = (...given: Parameters<typeof chamber>) =>
  valueOf(evaluate(vesselAssessment, chamber(...given)));

describe('modules of annex III by category: annex II point 1', () => {
  it.each([
    ['out of scope', [], false, false],
    ['Art4(3)', [], false, false],
    ['I', ['A'], false, true],
    ['II', ['A2', 'D1', 'E1'], true, true],
    [
      'III',
      [
        'B (design type) + D',
        'B (design type) + F',
        'B (production type) + E',
        'B (production type) + C2',
        'H',
      ],
      true,
      true,
    ],
    ['IV', ['B (production type) + D', 'B (production type) + F', 'G', 'H1'], true, true],
  ] as const)('category %s', (category, modules, notifiedBody, ceMarking) => {
    expect(conformityOf(category)).toEqual({ category, modules, notifiedBody, ceMarking });
    const whole = valueOf(evaluate(assembly, { equipment: [{ name: 'vessel', category }] }));
    expect(whole).toMatchObject({ category, decidedBy: 'vessel', notifiedBody, ceMarking, accessories: [] });
    expect(whole.modules).toEqual(modules);
  });

  it('are joined by duties that grow: number of the body from II, tests of joints from III', () => {
    const duties = (category: PedCategory): string => dutiesOf(category).join('\n');
    expect(duties('out of scope')).toContain('Not under the directive');
    expect(duties('Art4(3)')).toContain('sound engineering practice');
    expect(duties('I')).toContain('CE marking');
    expect(duties('I')).not.toContain('number of the notified body');
    expect(duties('II')).toContain('number of the notified body');
    expect(duties('II')).toContain('Permanent joining');
    expect(duties('II')).not.toContain('Non-destructive');
    expect(duties('III')).toContain('Non-destructive');
    expect(dutiesOf('IV')).toEqual(dutiesOf('III'));
  });
});

describe('an assembly', () => {
  const equipment = [
    { name: 'jacket', category: 'I' },
    { name: 'vessel', category: 'III' },
    { name: 'receiver', category: 'II' },
  ] as const;

  it('has the first of its highest items, and a safety accessory the category of what it was made for', () => {
    const whole = valueOf(
      evaluateWithEvidence(assembly, {
        equipment: [...equipment],
        safetyAccessories: [{ name: 'disc', madeFor: 'receiver' }, { name: 'valve' }],
      }),
    );
    expect(whole.outputs).toMatchObject({
      category: 'III',
      decidedBy: 'vessel',
      accessories: [
        { name: 'disc', category: 'II' },
        { name: 'valve', category: 'IV' },
      ],
    });
    expect(whole.steps.map(({ value, substituted }) => [substituted, value])).toEqual([
      ['jacket I, vessel III, receiver II', 'III'],
      ['disc', 'II'],
      ['valve', 'IV'],
    ]);
  });

  it('names what can be meant where an accessory is made for something else', () => {
    expect(
      evaluate(assembly, {
        equipment: [...equipment],
        safetyAccessories: [{ name: 'valve' }, { name: 'disc', madeFor: 'boiler' }],
      }),
    ).toMatchObject({
      ok: false,
      error: {
        code: 'CALC_INVALID_INPUT',
        field: 'safetyAccessories.1.madeFor',
        given: 'boiler',
        allowed: 'jacket, vessel, receiver',
      },
    });
  });
});

describe('state of the fluid', () => {
  it('is told with its vapour pressure against 1.513 bar', () => {
    // Saturation of water, IAPWS-IF97: 1.0142 bar at 100 °C, 1.9867 bar at 120 °C.
    expect(assessed([{ substance: 'water' }], 100).stateReason).toMatch(
      / 1\.0\d+ bar absolute, not above 1\.513/u,
    );
    expect(assessed([{ substance: 'water' }], 120).stateReason).toMatch(
      / (1\.9[89]|2\.0)\d* bar absolute, above 1\.513/u,
    );
  });

  it('is liquid below the reach of the vapour pressure, where TS is not above the boiling point', () => {
    const cold = assessed([{ substance: 'water' }], -20);
    expect(cold.fluidState).toBe('liquid');
    expect(cold.stateReason).toContain('not above the boiling point of 373');
  });

  it('is gas above the critical point, where no vapour pressure exists', () => {
    const hot = assessed([{ substance: 'water' }], 400);
    expect(hot.fluidState).toBe('gas');
    expect(hot.stateReason).toContain('no vapour pressure');
  });

  it('is gas for what is a gas at 20 °C, however cold', () => {
    const cold = assessed([{ substance: 'propane', vapourPressurePaAbs: 1e5 }], -60);
    expect(cold).toMatchObject({ fluidState: 'gas', stateReason: 'propane: a gas at 20 °C' });
  });

  it('names the bound of what is less volatile than a substance on file', () => {
    expect(assessed([{ substance: 'phosphoric acid' }], 100).stateReason).toMatch(
      /^phosphoric acid, less volatile than water: vapour pressure/u,
    );
  });

  it('tells all reasons where no fluid decides alone', () => {
    const both = assessed([{ substance: 'water' }, { substance: 'glycerol' }], 90);
    expect(both).toMatchObject({ fluidGroup: 2, fluidState: 'liquid' });
    expect(both.groupReason.split('; ')).toHaveLength(2);
    expect(both.stateReason).toMatch(/^water: .*; glycerol: /u);
    // The one gas decides alone, and so does the one fluid of group 1.
    const mixed = assessed([{ substance: 'water' }, { substance: 'hydrogen' }], 90);
    expect(mixed.stateReason).toBe('hydrogen: a gas at 20 °C');
    expect(mixed.groupReason).toMatch(/^hydrogen: /u);
  });

  it('is worth what the least of its rows is worth', () => {
    expect(assessed([{ substance: 'hydrogen' }], 90).basis).toBe('published');
    expect(assessed([{ substance: 'hydrogen' }, { substance: 'ethanol' }], 90).basis).toBe(
      'from memory, unverified',
    );
  });
});

describe('group of the fluid', () => {
  const reasonOf = (substance: string, temperatureC: number) =>
    valueOf(evaluate(fluidGroup, { substance, maxTemperatureK: temperatureC + 273.15 }));

  it('warns of a flash point that nobody knows, only where there can be one', () => {
    // An oil without classes on file may have a flash point; water has none, and a gas is not asked for one.
    expect(reasonOf('silicone oil (polydimethylsiloxane)', 100).reason).toContain(
      'no flash point is on file',
    );
    for (const known of ['water', 'nitrogen', 'steam', 'dichloromethane', 'sulfuric acid']) {
      expect(reasonOf(known, 100)).toMatchObject({
        fluidGroup: 2,
        reason: `${known}: no listed hazard class`,
      });
    }
  });

  it('belongs to the lower group at the flash point itself', () => {
    expect(reasonOf('DMSO', 86.7)).toMatchObject({ fluidGroup: 2 });
    expect(reasonOf('DMSO', 86.8)).toMatchObject({ fluidGroup: 1 });
  });

  it('has a code for a substance or a class that nobody knows', () => {
    expect(evaluate(fluidGroup, { substance: 'cheese', maxTemperatureK: 300 })).toMatchObject({
      ok: false,
      error: { code: 'CALC_UNKNOWN_SUBSTANCE' },
    });
    expect(evaluate(fluidGroupOfHazardClass, { hazardClass: 'harmless' })).toMatchObject({
      ok: false,
      error: { code: 'CALC_INVALID_INPUT' },
    });
  });
});

describe('lines of the tables', () => {
  const at = (point: VesselPoint) => classifyVessel(point);

  it.each<[string, VesselPoint, Partial<ReturnType<typeof classifyVessel>>]>([
    // A point on a line belongs below it, PED annex II point 3 and article 4.
    [
      'table 3, 800 bar × 0.25 L = 200 bar·L',
      { volumeL: 0.25, maxPressureBarGauge: 800, fluidState: 'liquid', fluidGroup: 1 },
      { category: 'II', disputed: false },
    ],
    [
      'table 3 above that line',
      { volumeL: 0.26, maxPressureBarGauge: 800, fluidState: 'liquid', fluidGroup: 1 },
      { category: 'III', disputed: true },
    ],
    [
      'table 3 at 1 L',
      { volumeL: 1, maxPressureBarGauge: 300, fluidState: 'liquid', fluidGroup: 1 },
      { disputed: true },
    ],
    [
      'table 3 at 1 L on the line',
      { volumeL: 1, maxPressureBarGauge: 200, fluidState: 'liquid', fluidGroup: 1 },
      { category: 'Art4(3)', disputed: false },
    ],
    [
      'table 2 at 4 bar beyond 1 000 bar·L',
      { volumeL: 251, maxPressureBarGauge: 4, fluidState: 'gas', fluidGroup: 2 },
      { disputed: true },
    ],
    [
      'table 2 at 4 bar on 1 000 bar·L',
      { volumeL: 250, maxPressureBarGauge: 4, fluidState: 'gas', fluidGroup: 2 },
      { category: 'II', disputed: false },
    ],
    [
      'table 4 is read in one way',
      { volumeL: 0.5, maxPressureBarGauge: 600, fluidState: 'liquid', fluidGroup: 2 },
      { category: 'Art4(3)', disputed: false },
    ],
    [
      'up to 0.5 bar',
      { volumeL: 1e6, maxPressureBarGauge: 0.5, fluidState: 'gas', fluidGroup: 1 },
      { category: 'out of scope', table: 0, disputed: false },
    ],
  ])('%s', (_name, point, expected) => {
    expect(at(point)).toMatchObject(expected);
  });

  it.each([
    ['a chamber', vesselAssessment, chamber([{ substance: 'nitrogen' }], 20)],
    [
      'a vessel',
      vesselCategory,
      { volumeL: 20, maxPressureBarGauge: 6, fluidState: 'gas', fluidGroup: 2 } as const,
    ],
  ] as const)('are shown with their product: %s', (_name, subject, inputs) => {
    const stepOf = (change: object) =>
      valueOf(
        evaluateWithEvidence(subject as typeof vesselAssessment, { ...inputs, ...change } as never),
      ).steps.find(({ symbol }) => symbol === 'category');
    expect(stepOf({})).toMatchObject({
      formula: 'annex II table 2',
      substituted: 'PS = 6 bar, V = 20 L, PS·V = 120 bar·L',
      value: 'I',
    });
    expect(stepOf({}) ?? {}).not.toHaveProperty('note');
    expect(stepOf({ maxPressureBarGauge: 0.4 })?.formula).toBe('PS ≤ 0.5 bar: article 1(1)');
    expect(stepOf({ maxPressureBarGauge: 3, volumeL: 400 })?.note).toContain('check with the notified body');
  });
});

describe('test pressure', () => {
  it('says which of its terms governs, and refuses half a ratio', () => {
    const stresses = (atTest: number, hot: number) => ({
      designStressAtTestPa: atTest,
      designStressAtMaxTemperaturePa: hot,
    });
    // 1.25 × 1.2 = 1.5 > 1.43; 1.25 × 1.1 = 1.375 < 1.43.
    expect(assessed([{ substance: 'water' }], 90, stresses(120e6, 100e6))).toMatchObject({
      testPressureBarGauge: 9,
      testPressureNote: '1.25 PS fa/ft governs',
    });
    expect(assessed([{ substance: 'water' }], 90, stresses(110e6, 100e6)).testPressureNote).toBe(
      '1.43 PS governs',
    );
    const evidence = valueOf(
      evaluateWithEvidence(testPressure, { maxPressureBarGauge: 6, ...stresses(120e6, 100e6) }),
    );
    expect(stepFaults(evidence.steps)).toEqual([]);
  });
});
