import { z } from 'zod';
import { type CalculationError, fail, type Outcome, succeed } from '@flangewise/model';
import { calculation, quantity, type StepLog } from '../calculation.js';
import { allowableStress } from '../materials/allowable-stress.js';
import { basisSchema, weakestBasis } from '../materials/basis.js';
import { relabelled } from '../relabelled.js';
import { shown } from '../shown.js';
import { fromMemory } from '../source-reference.js';
import { hydrostaticTest } from './hydrostatic-test.js';
import { permissiblePressureField } from './pressure-fields.js';
import { vesselRating } from './vessel-rating.js';

const temperature = quantity(
  { unit: 'K', symbol: 'T', description: 'Metal temperature' },
  z.number().min(4).max(1500),
);

const parts = ['shell', 'end', 'cover', 'other limit'] as const;

const inputs = vesselRating.inputs.omit({ allowableStressPa: true, coverAllowableStressPa: true }).extend({
  material: z.string().min(1).meta({ description: 'Material of shell and end: number or common name' }),
  coverMaterial: z
    .string()
    .min(1)
    .optional()
    .meta({ description: 'Material of the cover; that of the vessel unless given' }),
  temperaturesK: z.array(temperature).min(1).max(100),
  testTemperatureK: temperature
    .meta({ symbol: 'T_t', description: 'Metal temperature at the pressure test' })
    .default(293.15),
  pressureLimitPaGauge: permissiblePressureField
    .positive()
    .optional()
    .meta({ unit: 'Pa', symbol: 'P_l', description: 'Limit by closure, seal or ports (gauge)' }),
});

type Inputs = z.output<typeof inputs>;

interface Stresses {
  readonly vesselPa: number;
  readonly coverPa: number;
  readonly basis: z.output<typeof basisSchema>;
}

const asMaterialOf = (error: CalculationError, part: 'vessel' | 'cover') =>
  relabelled(error, {
    temperatureK: 'temperaturesK',
    material: part === 'vessel' ? 'material' : 'coverMaterial',
  });

/** AD 2000 keeps 1.5 against the proof strength as EN 13445-3 does, so its stresses are taken from there. */
const stressCode = (code: Inputs['code']) => (code === 'AD 2000' ? 'EN 13445-3' : code);

const stressesAt = (given: Inputs, temperatureK: number): Outcome<Stresses> => {
  const { material, coverMaterial } = given;
  const code = stressCode(given.code);
  const vessel = allowableStress.compute({ code, material, temperatureK });
  if (!vessel.ok) return asMaterialOf(vessel.error, 'vessel');
  const { stressPa: vesselPa, basis } = vessel.value;
  if (coverMaterial === undefined) return succeed({ vesselPa, coverPa: vesselPa, basis });
  const cover = allowableStress.compute({ code, material: coverMaterial, temperatureK });
  if (!cover.ok) return asMaterialOf(cover.error, 'cover');
  return succeed({
    vesselPa,
    coverPa: cover.value.stressPa,
    basis: weakestBasis([basis, cover.value.basis]),
  });
};

interface CurvePoint {
  readonly temperatureK: number;
  readonly designStressPa: number;
  readonly pressurePaGauge: number;
  readonly limitingPart: (typeof parts)[number];
  readonly testPressurePaGauge: number;
}

const explain = (point: CurvePoint, log: StepLog): void => {
  log({
    symbol: 'PS(T)',
    formula: 'least of the parts at f(T)',
    substituted: `T = ${shown(point.temperatureK)} K, f = ${shown(point.designStressPa)} Pa`,
    value: point.pressurePaGauge,
    unit: 'Pa',
    note: `limited by the ${point.limitingPart}`,
  });
};

type PartPressures = Readonly<Partial<Record<(typeof parts)[number], number>>>;

/** What each part carries per pascal of its design stress: the rules of all codes are proportional to it. */
const pressuresPerStress = (given: Inputs): Outcome<PartPressures> => {
  const rated = vesselRating.compute({ ...given, allowableStressPa: 1, coverAllowableStressPa: 1 });
  if (!rated.ok) return rated;
  const { shellPressurePaGauge: shell, endPressurePaGauge: end, coverPressurePaGauge: cover } = rated.value;
  return succeed({ shell, end, ...(cover === undefined ? {} : { cover }) });
};

interface Curve {
  readonly given: Inputs;
  readonly perStress: PartPressures;
  readonly cold: Stresses;
}

/** The weakest part at one temperature, and the test pressure that this point asks for. */
const pointAt = ({ given, perStress, cold }: Curve, temperatureK: number): Outcome<CurvePoint & Stresses> => {
  const stresses = stressesAt(given, temperatureK);
  if (!stresses.ok) return stresses;
  const { vesselPa, coverPa } = stresses.value;
  const { shell = Infinity, end = Infinity, cover = Infinity } = perStress;
  const pressures = [
    shell * vesselPa,
    end * vesselPa,
    cover * coverPa,
    given.pressureLimitPaGauge ?? Infinity,
  ];
  const pressurePaGauge = Math.min(...pressures);
  const ratio = Math.min(cold.vesselPa / vesselPa, cold.coverPa / coverPa);
  const test = hydrostaticTest.compute({
    code: given.code,
    pressurePaGauge,
    stressRatio: Math.max(1, ratio),
  });
  if (!test.ok) return test;
  return succeed({
    vesselPa,
    coverPa,
    basis: stresses.value.basis,
    temperatureK,
    designStressPa: vesselPa,
    pressurePaGauge,
    limitingPart: parts[pressures.indexOf(pressurePaGauge)] ?? 'shell',
    testPressurePaGauge: test.value.testPressurePaGauge,
  });
};

/**
 * Pressure–temperature curve of a vessel: PS at each temperature, the least of shell, end, cover and a given limit of
 * closure, seal or ports; and the test pressure that covers every point of the curve.
 *
 *   PS(T) = min over parts at f(T),  P_t = max over T of the test pressure of PS(T)
 *
 * @param as strength.vesselRating, with `material` and `coverMaterial` for the stresses; temperaturesK [K];
 *   pressureLimitPaGauge of closure, seal or ports [Pa]; testTemperatureK [K]
 * @returns points: temperatureK, designStressPa, pressurePaGauge, limitingPart; testPressurePaGauge;
 *   basis of the weakest stress used
 * @range to the last row of the table of each material; else as strength.vesselRating
 * @error CALC_UNKNOWN_MATERIAL, CALC_MISSING_PROPERTY, CALC_OUT_OF_RANGE
 * @source as strength.vesselRating, materials.allowableStress, strength.hydrostaticTest; the lowest ratio of the
 *   parts counts for the test (asme-viii-1 UG-99(b); en-13445-5:2021 §10.2.3.3)
 */
export const ratingCurve = calculation({
  id: 'strength.ratingCurve',
  title: 'Pressure–temperature curve of a vessel',
  inputs,
  outputs: z.strictObject({
    points: z.array(
      z.strictObject({
        temperatureK: temperature,
        designStressPa: quantity({ unit: 'Pa', symbol: 'f', description: 'Design stress of the vessel' }),
        pressurePaGauge: permissiblePressureField,
        limitingPart: z.enum(parts).meta({ description: 'The weakest part at this temperature' }),
      }),
    ),
    testPressurePaGauge: quantity({
      unit: 'Pa',
      symbol: 'P_t',
      description: 'Test pressure that covers all points (gauge)',
    }),
    basis: basisSchema.meta({ description: 'What the weakest stress used is worth' }),
  }),
  formula: String.raw`PS(T) = \min_\mathrm{parts} P\big(f(T)\big),\quad P_t = \max_T P_t\big(PS(T)\big)`,
  range:
    'to the last row of the table of each material; as strength.vesselRating; the test itself is a load case of its own',
  source: [
    ...vesselRating.source,
    ...allowableStress.source,
    ...hydrostaticTest.source,
    fromMemory('en-13445-5:2021 §10.2.3.3 lowest stress ratio of the parts'),
    fromMemory('ad-2000-b1 safety factor 1.5 against the proof strength'),
  ],
  compute: (given, log) => {
    const cold = stressesAt(given, given.testTemperatureK);
    if (!cold.ok) {
      return cold.error.field === 'temperaturesK' ? fail({ ...cold.error, field: 'testTemperatureK' }) : cold;
    }
    const perStress = pressuresPerStress(given);
    if (!perStress.ok) return perStress;
    const curve = { given, perStress: perStress.value, cold: cold.value };
    const points: (CurvePoint & Stresses)[] = [];
    for (const temperatureK of given.temperaturesK) {
      const point = pointAt(curve, temperatureK);
      if (!point.ok) return point;
      points.push(point.value);
      if (log !== undefined) explain(point.value, log);
    }
    const testPressurePaGauge = Math.max(...points.map((point) => point.testPressurePaGauge));
    log?.({
      symbol: 'P_t',
      formula: given.code === 'ASME VIII-1' ? 'max(1.3 PS f_a/f_t)' : 'max(1.43 PS; 1.25 PS f_a/f_t)',
      substituted: `over ${String(points.length)} temperatures, f_a at ${shown(given.testTemperatureK)} K`,
      value: testPressurePaGauge,
      unit: 'Pa',
    });
    return succeed({
      points: points.map(({ temperatureK, designStressPa, pressurePaGauge, limitingPart }) => ({
        temperatureK,
        designStressPa,
        pressurePaGauge,
        limitingPart,
      })),
      testPressurePaGauge,
      basis: weakestBasis([cold.value.basis, ...points.map(({ basis }) => basis)]),
    });
  },
});
