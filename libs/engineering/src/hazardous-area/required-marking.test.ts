import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { z } from 'zod';
import { evaluate, evaluateWithEvidence } from '../calculation.js';
import { stepFaults } from '../redone-by-hand.js';
import { dustSurfaceLimit } from './dust-surface-limit.js';
import { gasSurfaceLimit, gasSurfaceLimitK } from './gas-surface-limit.js';
import { findIgnitionData, ignitionData } from './ignition-data.js';
import { ignitionOfSubstance } from './ignition-of-substance.js';
import { gasGroupCovers, requiredMarking, requiredMarkingFor } from './required-marking.js';
import {
  surfaceLimitOfClassK,
  temperatureClassCovers,
  temperatureClasses,
  temperatureClassOf,
} from './temperature-class.js';
import { categoryCovers } from './zones.js';

const celsius = (value: number): number => value + 273.15;

const stepsOf = (inputs: z.input<typeof gasSurfaceLimit.inputs>) => {
  const evidence = evaluateWithEvidence(gasSurfaceLimit, inputs);
  if (!evidence.ok) throw new Error(evidence.error.message);
  return evidence.value;
};

describe('ignition data', () => {
  it('of toluene are those of IEC 60079-20-1', () => {
    const toluene = evaluate(ignitionOfSubstance, { substance: 'toluene' });
    expect(toluene.ok && toluene.value).toEqual({
      autoignitionTemperatureK: celsius(530),
      temperatureClass: 'T1',
      gasGroup: 'IIA',
      flashPointK: celsius(4),
      lowerExplosionLimitPercent: 1,
      basis: 'published',
    });
  });

  it('leave out what is not on file', () => {
    const hydrogen = evaluate(ignitionOfSubstance, { substance: 'hydrogen' });
    expect(hydrogen.ok && 'flashPointK' in hydrogen.value).toBe(false);
    const glycerol = evaluate(ignitionOfSubstance, { substance: 'glycerol' });
    expect(glycerol.ok && 'lowerExplosionLimitPercent' in glycerol.value).toBe(false);
    expect(evaluate(ignitionOfSubstance, { substance: 'cheese' })).toMatchObject({
      ok: false,
      error: { code: 'CALC_UNKNOWN_SUBSTANCE' },
    });
  });

  it.each([
    ['0', undefined, 373.15],
    ['1', undefined, 398.15],
    ['1', true, 373.15],
    ['2', true, 398.15],
  ] as const)('limit a surface in zone %s to a share of 125 °C', (zone, reached, limitK) => {
    const { outputs, steps } = stepsOf({
      autoignitionTemperatureK: celsius(125),
      zone,
      gasReachesSurfaceTemperature: reached,
    });
    expect(outputs['temperatureK']).toBeCloseTo(limitK, 9);
    expect(stepFaults(steps.filter(({ formula }) => formula !== 'T_ai'))).toEqual([]);
    expect(steps[0]?.formula === 'T_ai').toBe(limitK > 374);
  });
});

describe('marking for a zone and its substances', () => {
  it('takes the group from one substance and the class from another', () => {
    const marking = requiredMarkingFor('1', ['hydrogen', 'diethyl ether', 'toluene', 'nitrogen', 'water']);
    expect(marking.ok && marking.value).toMatchObject({
      category: '2G',
      protectionLevel: 'Gb',
      gasGroup: 'IIC',
      gasGroupSubstance: 'hydrogen',
      temperatureClass: 'T4',
      limitingSubstance: 'diethyl ether',
    });
    // Diethyl ether ignites at 175 °C (IEC 60079-20-1:2010), T4 ends at 135 °C (IEC 60079-0).
    expect(marking.ok && marking.value.classMarginK).toBeCloseTo(40, 6);
  });

  it('is worth what its weakest row is worth, and shows what decides', () => {
    const basisOf = (substances: string[]) => {
      const marking = evaluateWithEvidence(requiredMarking, { zone: '1', substances });
      if (!marking.ok) throw new Error(marking.error.message);
      return marking.value;
    };
    const rows = ignitionData.filter(
      ({ basis, gasGroupBasis }) => basis === 'published' && gasGroupBasis === 'published',
    );
    const remembered = ignitionData.filter((row) => row.gasGroupBasis === 'from memory, unverified');
    for (const { name } of rows.slice(0, 3)) expect(basisOf([name]).outputs['basis']).toBe('published');
    expect(remembered.length).toBeGreaterThan(0);
    for (const { name } of remembered.slice(0, 3)) {
      expect(basisOf([name]).outputs['basis']).toBe('from memory, unverified');
    }
    expect(basisOf(['hydrogen', 'diethyl ether']).steps[0]).toMatchObject({
      substituted: 'group by hydrogen, class by diethyl ether',
      value: 'II 2G IIC T4',
    });
  });

  it('keeps 80 % in zone 0', () => {
    const marking = requiredMarkingFor('0', ['tetrahydrofuran']);
    expect(marking.ok && marking.value.surfaceLimitK).toBeCloseTo(celsius(184), 6);
  });

  it('is never eased by one substance more', () => {
    const names = ignitionData.map(({ name }) => name);
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(...names), { minLength: 1, maxLength: 6 }),
        fc.constantFrom(...names),
        (some, more) => {
          const before = requiredMarkingFor('2', some);
          const after = requiredMarkingFor('2', [...some, more]);
          if (!before.ok || !after.ok) throw new Error('every substance on file has a class');
          expect(gasGroupCovers(after.value.gasGroup, before.value.gasGroup)).toBe(true);
          expect(temperatureClassCovers(after.value.temperatureClass, before.value.temperatureClass)).toBe(
            true,
          );
          expect(after.value.classMarginK).toBeGreaterThan(0);
        },
      ),
    );
  });

  it('does not guess', () => {
    const none = requiredMarkingFor('1', ['water', 'nitrogen', 'sulfuric acid']);
    expect(!none.ok && none.error.code).toBe('CALC_MISSING_PROPERTY');
    const unknown = requiredMarkingFor('1', ['hydrogen', 'cheese']);
    expect(!unknown.ok && unknown.error.code).toBe('CALC_UNKNOWN_SUBSTANCE');
    const hydrazine = requiredMarkingFor('1', ['hydrazine']);
    expect(!hydrazine.ok && hydrazine.error.code).toBe('CALC_UNKNOWN_SUBSTANCE');
    expect(evaluate(requiredMarking, { zone: '1', substances: [] }).ok).toBe(false);
  });
});

describe('covering', () => {
  it('follows group, class and category', () => {
    expect(gasGroupCovers('IIC', 'IIA')).toBe(true);
    expect(gasGroupCovers('IIA', 'IIB')).toBe(false);
    expect(temperatureClassCovers('T4', 'T3')).toBe(true);
    expect(temperatureClassCovers('T3', 'T4')).toBe(false);
    expect(categoryCovers('1G', '2G')).toBe(true);
    expect(categoryCovers('3G', '2G')).toBe(false);
    expect(categoryCovers('2D', '2G')).toBe(false);
  });
});

describe('temperature classes', () => {
  it.each([
    [451, 'T1'],
    [450, 'T2'],
    [301, 'T2'],
    [300, 'T3'],
    [201, 'T3'],
    [200, 'T4'],
    [136, 'T4'],
    [135, 'T5'],
    [101, 'T5'],
    [100, 'T6'],
    [86, 'T6'],
  ])('%d °C: %s', (autoignitionC, expected) => {
    const found = temperatureClassOf(celsius(autoignitionC));
    expect(found.ok && found.value).toBe(expected);
  });

  it('end at 85 °C', () => {
    const found = temperatureClassOf(celsius(85));
    expect(!found.ok && found.error.code).toBe('CALC_OUT_OF_RANGE');
  });

  it('keep their surface below the autoignition temperature', () => {
    fc.assert(
      fc.property(fc.double({ min: celsius(85.1), max: 2000, noNaN: true }), (temperatureK) => {
        const found = temperatureClassOf(temperatureK);
        if (!found.ok) throw new Error(found.error.message);
        expect(surfaceLimitOfClassK(found.value)).toBeLessThan(temperatureK);
        const wider = temperatureClasses[temperatureClasses.indexOf(found.value) - 1];
        if (wider !== undefined)
          expect(surfaceLimitOfClassK(wider)).toBeGreaterThanOrEqual(temperatureK - 0.001);
      }),
    );
  });
});

describe('surface limits', () => {
  it.each([
    // 80 % of the autoignition temperature in °C, TRGS 723 5.2.3.
    [175, 140],
    [535, 428],
    [230, 184],
    [90, 72],
  ])('zone 0 at %d °C: %d °C', (autoignitionC, limitC) => {
    const limit = evaluate(gasSurfaceLimit, { autoignitionTemperatureK: celsius(autoignitionC), zone: '0' });
    expect(limit.ok && limit.value.temperatureK - 273.15).toBeCloseTo(limitC, 9);
  });

  it('never rise with the danger of the zone', () => {
    fc.assert(
      fc.property(fc.double({ min: 274, max: 2000, noNaN: true }), (autoignitionTemperatureK) => {
        const at = (zone: '0' | '1' | '2'): number => gasSurfaceLimitK({ autoignitionTemperatureK, zone });
        expect(at('0')).toBeLessThanOrEqual(at('1'));
        expect(at('1')).toBeLessThanOrEqual(at('2'));
        expect(
          gasSurfaceLimitK({ autoignitionTemperatureK, zone: '1', gasReachesSurfaceTemperature: true }),
        ).toBe(at('0'));
      }),
    );
  });

  it('take the lower of cloud and layer for dust', () => {
    // 450 °C cloud, 300 °C layer: 225 °C by the layer (IEC 60079-14).
    const layer = evaluate(dustSurfaceLimit, {
      cloudIgnitionTemperatureK: celsius(450),
      layerIgnitionTemperatureK: celsius(300),
    });
    expect(layer.ok && layer.value).toMatchObject({ governs: 'layer' });
    expect(layer.ok && layer.value.temperatureK - 273.15).toBeCloseTo(225, 9);
    const cloud = evaluate(dustSurfaceLimit, {
      cloudIgnitionTemperatureK: celsius(240),
      layerIgnitionTemperatureK: celsius(300),
    });
    expect(cloud.ok && cloud.value.governs).toBe('cloud');
  });
});

describe('ignition data', () => {
  it('are found by CAS number, name and alias', () => {
    for (const name of ['109-99-9', 'tetrahydrofuran', 'THF', 'thf']) {
      const found = findIgnitionData(name);
      expect(found.ok && found.value.cas).toBe('109-99-9');
    }
  });

  it('have a class and a basis for every substance on file', () => {
    for (const { name } of ignitionData) {
      const found = evaluate(ignitionOfSubstance, { substance: name });
      expect(found.ok, name).toBe(true);
    }
  });
});
