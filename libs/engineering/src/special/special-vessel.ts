import { z } from 'zod';
import { type Outcome, succeed } from '@flangewise/model';
import { calculation, quantity, type StepLog } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { endFormField } from '../geometry/end-form.js';
import { coneHalfAngleField, distance, lengthField, mass } from '../geometry/geometry-fields.js';
import { vesselGeometry } from '../geometry/vessel-geometry.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { smallestEnough } from '../smallest-enough.js';
import { commonPractice } from '../source-reference.js';
import { cylinderSources } from '../strength/cylinder-sources.js';
import { endRating } from '../strength/end-rating.js';
import {
  allowableStressField,
  codeField,
  jointEfficiencyField,
  pressureField,
} from '../strength/pressure-fields.js';
import { requiredWall } from '../strength/required-wall.js';
import { torisphericalSources } from '../strength/torispherical-rules.js';

/** Material bought over material that stays: a forged or rolled blank that is machined, test pieces, offcuts. */
const usualBlankFactor = 1.6;
const usualStep = 0.0005;

const inputs = z.strictObject({
  code: codeField,
  innerDiameterM: lengthField('D_i', 'Bore'),
  volumeM3: quantity({ unit: 'm3', symbol: 'V', description: 'Inner volume' }, z.number().positive()),
  form: endFormField,
  coneHalfAngleDeg: coneHalfAngleField.optional(),
  pressurePaGauge: pressureField,
  allowableStressPa: allowableStressField,
  jointEfficiency: jointEfficiencyField.optional(),
  corrosionAllowanceM: quantity(
    { unit: 'm', symbol: 'c', description: 'Corrosion allowance; 0 unless given' },
    z.number().min(0),
  ).optional(),
  thicknessStepM: quantity(
    { unit: 'm', symbol: 's', description: 'Step to which walls are rounded up; 0.5 mm unless given' },
    z.number().positive(),
  ).optional(),
  densityKgPerM3: quantity(
    { unit: 'kg/m3', symbol: 'ρ', description: 'Density of the material' },
    z.number().positive(),
  ),
  pricePerKg: quantity(
    { unit: '1/kg', symbol: 'k', description: 'Price of the material per kilogram, in any currency' },
    z.number().min(0),
  ).optional(),
  blankFactor: quantity(
    { unit: '1', symbol: 'n_b', description: 'Mass bought over mass that stays; 1.6 unless given' },
    z.number().min(1).max(10),
  ).optional(),
});

type Inputs = z.output<typeof inputs>;

/** Smallest wall of the end in whole steps that carries the pressure with the wall of the cylinder. */
const endWall = (
  given: Inputs,
  { cylinderThickness, step }: { readonly cylinderThickness: number; readonly step: number },
  log?: StepLog,
): Outcome<number> => {
  const rated = (thickness: number, steps?: StepLog) =>
    endRating(
      {
        code: given.code,
        form: given.form,
        innerDiameter: given.innerDiameterM,
        thickness,
        cylinderThickness,
        corrosionAllowance: given.corrosionAllowanceM ?? 0,
        coneHalfAngleDeg: given.coneHalfAngleDeg,
        attachmentFactor: undefined,
        allowableStress: given.allowableStressPa,
        jointEfficiency: given.jointEfficiency ?? 1,
      },
      steps,
    );
  const carries = (thickness: number): boolean => {
    const pressure = rated(thickness);
    return pressure.ok && pressure.value >= given.pressurePaGauge;
  };
  const corroded = given.corrosionAllowanceM ?? 0;
  const thickest = corroded + given.innerDiameterM / 2;
  // Most ends need less than twice the wall of the cylinder: looked at first, to have less to search.
  const enough = [Math.min(2 * cylinderThickness, thickest), thickest].find(carries);
  if (enough !== undefined) {
    const steps = smallestEnough({
      low: Math.floor(corroded / step),
      high: Math.ceil(enough / step),
      tolerance: 1,
      isEnough: (count) => carries(Math.min(enough, Math.ceil(count) * step)),
    });
    const thickness = Math.ceil(steps) * step;
    if (log !== undefined) {
      rated(thickness, log);
      log({
        symbol: 'e_e',
        formula: 'least whole multiple of s whose permissible pressure is not below P',
        substituted: `multiples of ${shown(step)} m, P = ${shown(given.pressurePaGauge)} Pa; this wall is checked above, corroded`,
        value: thickness,
        unit: 'm',
      });
    }
    return succeed(thickness);
  }
  const best = rated(thickest);
  return best.ok
    ? outOfRange({
        field: 'pressurePaGauge',
        given: given.pressurePaGauge,
        unit: 'Pa',
        allowed: `up to ${shown(best.value)} Pa for a ${given.form} end at this bore and stress; take another form of end`,
      })
    : best;
};

/**
 * A special vessel from bore, volume and pressure: walls, length, mass, price of its material. For engineering
 * review: closure, flange, nozzles and openings come on top.
 *
 * @returns walls, length, outer diameter, depth [m], masses [kg], materialPrice where a price per kg is given
 * @range the end fits into the volume; walls up to half of the bore for the end
 * @error CALC_OUT_OF_RANGE where the bore is too wide for the volume or no wall carries the pressure;
 *   CALC_INVALID_INPUT as the end
 * @source as strength.vesselRating; blank factor: common practice
 */
export const specialVessel = calculation({
  id: 'special.vessel',
  title: 'A special vessel from bore, volume and pressure',
  inputs,
  outputs: z.strictObject({
    wallThicknessM: distance('e_n', 'Wall of the cylinder'),
    endThicknessM: distance('e_e', 'Wall of the end'),
    outerDiameterM: distance('D_e', 'Outer diameter'),
    cylinderLengthM: distance('L', 'Length of the cylinder'),
    totalDepthM: distance('H', 'Inner depth'),
    massKg: mass('m', 'Mass of shell and end'),
    blankMassKg: mass('m_b', 'Mass of the material to buy'),
    materialPrice: quantity({
      unit: '1',
      symbol: 'K',
      description: 'Price of the material, in the currency of the price per kilogram',
    }).optional(),
    shellMethod: z
      .enum(['thin wall', 'thick wall'])
      .meta({ description: 'Which formula holds for the shell' }),
  }),
  formula: String.raw`L = \frac{V - V_e}{\tfrac{\pi}{4} D_i^2},\quad K = n_b\,m\,k`,
  range:
    'volume above that of the end; end at most half of the bore thick; closure, flange and nozzles not counted',
  source: [
    ...cylinderSources,
    ...torisphericalSources,
    commonPractice('blank factor 1.6 of machined vessels'),
  ],
  compute: (given, log) => {
    const { innerDiameterM: D_i, thicknessStepM: step = usualStep, densityKgPerM3: ρ } = given;
    const shell = requiredWall.compute(
      {
        code: given.code,
        innerDiameterM: D_i,
        pressurePaGauge: given.pressurePaGauge,
        allowableStressPa: given.allowableStressPa,
        jointEfficiency: given.jointEfficiency,
        corrosionAllowanceM: given.corrosionAllowanceM,
        thicknessStepM: step,
      },
      log,
    );
    if (!shell.ok) return shell;
    const wallThicknessM = Math.max(step, shell.value.wallThicknessM);
    const end = endWall(given, { cylinderThickness: wallThicknessM, step }, log);
    if (!end.ok) return end;
    const endThicknessM = end.value;
    const size = {
      innerDiameter: D_i,
      wallThickness: wallThicknessM,
      endThickness: endThicknessM,
      form: given.form,
      coneHalfAngleRad: ((given.coneHalfAngleDeg ?? 45) * Math.PI) / 180,
    };
    const endVolume = vesselGeometry({ ...size, cylinderLength: 0 }).volume;
    if (given.volumeM3 <= endVolume) {
      return outOfRange({
        field: 'volumeM3',
        given: given.volumeM3,
        unit: 'm³',
        allowed: `more than the end alone holds at this bore (${shown(endVolume)} m³); take a smaller bore`,
      });
    }
    const cylinderLengthM = (given.volumeM3 - endVolume) / ((Math.PI / 4) * D_i ** 2);
    const geometry = vesselGeometry({ ...size, cylinderLength: cylinderLengthM });
    const { shellVolume: V_s, endWallVolume: V_w } = geometry;
    const massKg = (V_s + V_w) * ρ;
    const n_b = given.blankFactor ?? usualBlankFactor;
    const blankMassKg = massKg * n_b;
    if (log !== undefined) {
      const where = { V: given.volumeM3, V_e: endVolume, D_i, ρ, V_s, V_w, n_b, m: massKg };
      const steps = [
        ['L', '(V − V_e) / (π / 4 · D_i²)', cylinderLengthM, 'm', 'V_e volume inside the end'],
        ['m', 'ρ · (V_s + V_w)', massKg, 'kg', 'V_s material of the cylinder, V_w of the end'],
        [
          'm_b',
          'n_b · m',
          blankMassKg,
          'kg',
          given.blankFactor === undefined ? 'blank factor: common practice' : undefined,
        ],
      ] as const;
      for (const [symbol, formula, value, unit, note] of steps) {
        log(formulaStep({ symbol, formula, where, value, unit, note }));
      }
    }
    return succeed({
      wallThicknessM,
      endThicknessM,
      outerDiameterM: geometry.outerDiameter,
      cylinderLengthM,
      totalDepthM: geometry.depth,
      massKg,
      blankMassKg,
      ...(given.pricePerKg === undefined ? {} : { materialPrice: blankMassKg * given.pricePerKg }),
      shellMethod: shell.value.method,
    });
  },
});
