import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { extentField, lengthField } from '../geometry/geometry-fields.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { fromMemory, published } from '../source-reference.js';
import { openingFields, openingsOf } from './cover-fields.js';
import { coverShape, flatCoverPressureOf, openingFactor } from './flat-cover-rule.js';
import { allowableStressField, permissiblePressureField, pressureField } from './pressure-fields.js';

/**
 * Permissible pressure of a flat cover of given thickness, bolted or clamped outside its seal, with openings.
 *
 *   P   = f e² k_o / (3 (3 + ν)/32 G² + 3 (G/4 + 2 b m)(C − G))       operation
 *   e_A = √(3 (C − G)/(π G) · W / (f_A k_o))                          assembly
 *   k_o = least (j − d)/j                                             openings
 *
 * @param sealDiameterM G    @param loadDiameterM C ≥ G: bolts, clamp or segments [m]
 * @param assemblyLoadN W, whole bolt or clamp load at assembly [N]
 * @param pressurePaGauge where given, requiredThicknessM answers for it [Pa]
 * @returns pressurePaGauge [Pa], openingFactor k_o [-], assemblyThicknessM e_A [m], requiredThicknessM [m]
 * @range C ≥ G, openings that leave material
 * @error CALC_OUT_OF_RANGE outside the range, CALC_INVALID_INPUT for ports without pitch circle
 * @source en-13445-3:2021 §10.5.2.1, §10.6 (from memory, unverified); timoshenko-plates-shells-2 §16
 */
export const flatCover = calculation({
  id: 'strength.flatCover',
  title: 'Permissible pressure of a flat cover with openings',
  inputs: z.strictObject({
    thicknessM: lengthField('e', 'Thickness, corroded, less its tolerance'),
    sealDiameterM: lengthField('G', 'Diameter on which the seal lies'),
    loadDiameterM: lengthField('C', 'Circle of bolts, clamp or segments'),
    gasketWidthM: extentField('b', 'Effective gasket width; 0 unless given').optional(),
    gasketFactor: quantity(
      { unit: '1', symbol: 'm', description: 'Gasket factor; 0 unless given' },
      z.number().min(0).max(20),
    ).optional(),
    allowableStressPa: allowableStressField,
    assemblyStressPa: allowableStressField
      .meta({ symbol: 'f_A', description: 'Allowable stress at assembly; f unless given' })
      .optional(),
    assemblyLoadN: quantity(
      { unit: 'N', symbol: 'W', description: 'Bolt or clamp load at assembly; 0 unless given' },
      z.number().min(0),
    ).optional(),
    pressurePaGauge: pressureField.optional(),
    ...openingFields,
  }),
  outputs: z.strictObject({
    pressurePaGauge: permissiblePressureField,
    openingFactor: quantity({
      unit: '1',
      symbol: 'k_o',
      description: 'Share of the strength left by the openings',
    }),
    assemblyThicknessM: quantity({
      unit: 'm',
      symbol: 'e_A',
      description: 'Thickness that the assembly load asks for',
    }),
    requiredThicknessM: quantity({
      unit: 'm',
      symbol: 'e_req',
      description: 'Thickness for the pressure given and the assembly load',
    }).optional(),
  }),
  formula: String.raw`P = \frac{f\,e^2 k_o}{\tfrac{3(3+\nu)}{32} G^2 + 3\left(\tfrac{G}{4} + 2 b m\right)(C - G)}`,
  range: 'circular flat cover, load circle at or outside the seal, openings that leave material between them',
  source: [published('timoshenko-plates-shells-2 §16'), fromMemory('en-13445-3:2021 §10.5.2.1, §10.6')],
  compute: (given, log) => {
    const { thicknessM: e, sealDiameterM: G, loadDiameterM: C, allowableStressPa: f } = given;
    if (C < G) {
      return outOfRange({
        field: 'loadDiameterM',
        given: C,
        unit: 'm',
        allowed: `at least the seal diameter (${shown(G)} m)`,
      });
    }
    const openings = openingsOf(given, G);
    if (!openings.ok) return openings;
    const k_o = openingFactor(openings.value, G);
    const [b, m] = [given.gasketWidthM ?? 0, given.gasketFactor ?? 0];
    const gasket = { sealDiameter: G, gasketWidth: b, gasketFactor: m };
    const pressurePaGauge = flatCoverPressureOf({
      ...gasket,
      thickness: e,
      loadDiameter: C,
      allowableStress: f,
      openings: openings.value,
    });
    const W = given.assemblyLoadN ?? 0;
    const assemblyStress = given.assemblyStressPa ?? f;
    const assemblyThicknessM = Math.sqrt((3 * (C - G) * W) / (Math.PI * G * assemblyStress * k_o));
    log?.({
      symbol: 'k_o',
      formula: 'least (j − d) / j over centre, neighbours and rim',
      substituted: `d_0 = ${shown(openings.value.central)} m, ${String(openings.value.portCount)} ports of ${shown(openings.value.port)} m on ${shown(openings.value.portCircle)} m`,
      value: k_o,
      unit: '1',
      note: 'EN 13445-3 10.6, openings not reinforced',
    });
    log?.(
      formulaStep({
        symbol: 'P',
        formula: 'f · e² · k_o / (0.309375 · G² + 3 · (G / 4 + 2 · b · m) · (C − G))',
        where: { f, e, k_o, G, b, m, C },
        value: pressurePaGauge,
        unit: 'Pa',
        note: 'EN 13445-3 10.5.2.1, operation, ν = 0.3; from memory, unverified',
      }),
    );
    log?.(
      formulaStep({
        symbol: 'e_A',
        formula: '√(3 · (C − G) · W / (π · G · f_A · k_o))',
        where: { C, G, W, f_A: assemblyStress, k_o },
        value: assemblyThicknessM,
        unit: 'm',
        note: 'EN 13445-3 10.5.2.1, assembly; from memory, unverified',
      }),
    );
    const P = given.pressurePaGauge;
    return succeed({
      pressurePaGauge,
      openingFactor: k_o,
      assemblyThicknessM,
      ...(P === undefined
        ? {}
        : {
            requiredThicknessM: Math.max(
              assemblyThicknessM,
              Math.sqrt((coverShape(gasket, C - G) * P) / (f * k_o)),
            ),
          }),
    });
  },
});
