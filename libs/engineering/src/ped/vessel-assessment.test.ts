import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, evaluateWithEvidence } from '../calculation.js';
import { fluidGroupOf } from './fluid-group.js';
import { fluidGroupOfClass } from './fluid-group-of-hazard-class.js';
import { substanceHazards } from './substance-hazards.js';
import { testPressure } from './test-pressure.js';
import type { ChamberFluid } from './classify-chamber.js';
import { vesselAssessment } from './vessel-assessment.js';

interface Case {
  readonly fluids: readonly (string | ChamberFluid)[];
  readonly ps: number;
  readonly volumeL: number;
  readonly temperatureC: number;
}

const assess = ({ fluids, ps, volumeL, temperatureC }: Case) => {
  const result = evaluate(vesselAssessment, {
    volumeL,
    maxPressureBarGauge: ps,
    maxTemperatureK: temperatureC + 273.15,
    fluids: fluids.map((fluid) => (typeof fluid === 'string' ? { substance: fluid } : { ...fluid })),
  });
  if (!result.ok) throw new Error(result.error.message);
  return result.value;
};

describe('assessment of a vessel chamber', () => {
  it('takes a hydrogenation of 2 L at 60 bar to category II by table 1', () => {
    const result = assess({ fluids: ['hydrogen', 'ethanol'], ps: 60, volumeL: 2, temperatureC: 200 });
    expect(result).toMatchObject({
      category: 'II',
      table: 1,
      fluidGroup: 1,
      fluidState: 'gas',
      modules: ['A2', 'D1', 'E1'],
      notifiedBody: true,
      ceMarking: true,
      disputed: false,
      testPressureBarGauge: 1.43 * 60,
    });
    expect(result.momentaryLimitBarGauge).toBeCloseTo(66, 9);
    expect(result.groupReason).toContain('H220');
    expect(result.testPressureNote).toContain('lower bound');
  });

  it('calls water a gas from 112 °C on', () => {
    // Saturation pressure of water, IAPWS-IF97: 1.0142 bar at 100 °C, 1.5328 bar at 112 °C.
    expect(assess({ fluids: ['water'], ps: 6, volumeL: 20, temperatureC: 100 })).toMatchObject({
      fluidState: 'liquid',
      table: 4,
    });
    expect(assess({ fluids: ['water'], ps: 6, volumeL: 20, temperatureC: 112 })).toMatchObject({
      fluidState: 'gas',
      table: 2,
    });
  });

  it('lets a blanketing gas carry the vapour of a liquid of group 1', () => {
    expect(assess({ fluids: ['nitrogen', 'DMSO'], ps: 10, volumeL: 5, temperatureC: 60 })).toMatchObject({
      fluidGroup: 2,
      table: 2,
    });
    const hot = assess({ fluids: ['nitrogen', 'DMSO'], ps: 10, volumeL: 5, temperatureC: 120 });
    expect(hot).toMatchObject({ fluidGroup: 1, table: 1 });
    expect(hot.groupReason).toContain('flash point');
  });

  it('knows a caustic solution as less volatile than water', () => {
    const result = assess({ fluids: ['caustic soda'], ps: 6, volumeL: 20, temperatureC: 100 });
    expect(result).toMatchObject({ fluidState: 'liquid', fluidGroup: 2, category: 'Art4(3)' });
  });

  it('takes a liquid of unknown vapour pressure as gas and says so', () => {
    const unknown = assess({ fluids: ['pyridine'], ps: 6, volumeL: 20, temperatureC: 60 });
    expect(unknown.fluidState).toBe('gas');
    expect(unknown.stateReason).toContain('vapourPressurePaAbs');
    const known = assess({
      fluids: [{ substance: 'pyridine', vapourPressurePaAbs: 15_000 }],
      ps: 6,
      volumeL: 20,
      temperatureC: 60,
    });
    expect(known.fluidState).toBe('liquid');
  });

  it('marks nothing under article 4(3)', () => {
    const result = assess({ fluids: ['nitrogen', 'water'], ps: 10, volumeL: 1, temperatureC: 80 });
    expect(result).toMatchObject({ category: 'Art4(3)', ceMarking: false, modules: [], notifiedBody: false });
    expect(result.duties.join(' ')).toContain('No CE marking');
  });

  it('sends disputed points to the notified body', () => {
    const result = assess({ fluids: ['nitrogen'], ps: 3, volumeL: 400, temperatureC: 80 });
    expect(result).toMatchObject({ disputed: true, advice: 'check with the notified body' });
  });

  it('takes the stress ratio into the test pressure where both stresses are given', () => {
    const result = evaluate(vesselAssessment, {
      volumeL: 2,
      maxPressureBarGauge: 200,
      maxTemperatureK: 573.15,
      fluids: [{ substance: 'hydrogen' }],
      designStressAtTestPa: 150e6,
      designStressAtMaxTemperaturePa: 113.33e6,
    });
    expect(result.ok && result.value.testPressureBarGauge).toBeCloseTo(330.89, 1);
    const half = evaluate(vesselAssessment, {
      volumeL: 2,
      maxPressureBarGauge: 200,
      maxTemperatureK: 573.15,
      fluids: [{ substance: 'hydrogen' }],
      designStressAtTestPa: 150e6,
    });
    expect(!half.ok && half.error.field).toBe('designStressAtMaxTemperaturePa');
  });

  it('shows its steps', () => {
    const evidence = evaluateWithEvidence(vesselAssessment, {
      volumeL: 2,
      maxPressureBarGauge: 60,
      maxTemperatureK: 473.15,
      fluids: [{ substance: 'hydrogen' }],
    });
    expect(evidence.ok && evidence.value.steps.map(({ symbol }) => symbol)).toEqual([
      'group',
      'state',
      'category',
      'p_t',
    ]);
  });

  it('has a code for a substance that is not on file', () => {
    const result = evaluate(vesselAssessment, {
      volumeL: 2,
      maxPressureBarGauge: 60,
      maxTemperatureK: 473.15,
      fluids: [{ substance: 'cheese' }],
    });
    expect(!result.ok && result.error.code).toBe('CALC_UNKNOWN_SUBSTANCE');
  });
});

describe('fluid groups', () => {
  it('never turn from 1 to 2 when TS rises', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...substanceHazards.map(({ name }) => name)),
        fc.double({ min: 200, max: 700, noNaN: true }),
        fc.double({ min: 0, max: 300, noNaN: true }),
        (name, temperatureK, rise) => {
          const cool = fluidGroupOf(name, temperatureK);
          const warm = fluidGroupOf(name, temperatureK + rise);
          if (!cool.ok || !warm.ok) throw new Error(`no group for ${name}`);
          expect(warm.value.fluidGroup).toBeLessThanOrEqual(cool.value.fluidGroup);
        },
      ),
      { numRuns: 1000 },
    );
  });

  it('change above the flash point, not at it', () => {
    // Flash point of acetic acid 39 °C, IEC 60079-20-1:2010.
    const group = (temperatureC: number): number | false => {
      const result = fluidGroupOf('64-19-7', temperatureC + 273.15);
      return result.ok && result.value.fluidGroup;
    };
    expect(group(38.9)).toBe(2);
    expect(group(39.1)).toBe(1);
  });

  it('read hazard classes in any spelling', () => {
    for (const [name, group] of [
      ['Acute Tox. 3 (inhalation)', 1],
      ['ACUTE TOX 3 ORAL', 2],
      ['Flam. Gas 1A', 1],
      ['Self-react. Type G', 2],
      ['Aquatic Chronic 2', 2],
    ] as const) {
      const result = fluidGroupOfClass(name);
      expect(result.ok && result.value).toBe(group);
    }
  });

  it('ask where a class alone does not decide, and refuse what is no class', () => {
    const code = (name: string): string => {
      const result = fluidGroupOfClass(name);
      return result.ok ? 'ok' : result.error.code;
    };
    expect(code('Flam. Liq. 3')).toBe('CALC_MISSING_PROPERTY');
    expect(code('Acute Tox. 3')).toBe('CALC_MISSING_PROPERTY');
    expect(code('harmless')).toBe('CALC_INVALID_INPUT');
    fc.assert(
      fc.property(fc.string(), (name) => {
        expect(['ok', 'CALC_MISSING_PROPERTY', 'CALC_INVALID_INPUT']).toContain(code(name));
      }),
    );
  });
});

describe('test pressure', () => {
  it('crosses from 1.43 PS to the stress ratio at 1.144', () => {
    const governs = (ratio: number): string | false => {
      const result = evaluate(testPressure, {
        maxPressureBarGauge: 10,
        designStressAtTestPa: ratio * 100e6,
        designStressAtMaxTemperaturePa: 100e6,
      });
      return result.ok && result.value.governs;
    };
    expect(governs(1.143)).toBe('1.43 PS');
    expect(governs(1.145)).toBe('1.25 PS fa/ft');
  });
});
