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
import { cylinderRules } from '../strength/cylinder-rules.js';
import { cylinderSources } from '../strength/cylinder-sources.js';
import { endRating } from '../strength/end-rating.js';
import {
  allowableStressField,
  codeField,
  jointEfficiencyField,
  pressureField,
} from '../strength/pressure-fields.js';
import { roundUpTo } from '../strength/round-up.js';
import { torisphericalSources } from '../strength/torispherical-rules.js';
import { wallNeed } from '../strength/wall-calculation.js';

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
const endWall = (given: Inputs, cylinderThickness: number, step: number): Outcome<number> => {
  const rated = (thickness: number) =>
    endRating({
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
    });
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
    return succeed(Math.ceil(steps) * step);
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

const explain = (
  given: Inputs,
  result: { wall: number; end: number; length: number; mass: number },
  log: StepLog,
) => {
  const { innerDiameterM: D_i, corrosionAllowanceM: c = 0 } = given;
  log({
    symbol: 'e_n',
    formula: 'required wall of the cylinder + c, rounded up',
    substituted: `P = ${shown(given.pressurePaGauge)} Pa, D_i = ${shown(D_i)} m, c = ${shown(c)} m, ${given.code}`,
    value: result.wall,
    unit: 'm',
  });
  log({
    symbol: 'e_e',
    formula: `required wall of the ${given.form} end + c, rounded up`,
    substituted: `P = ${shown(given.pressurePaGauge)} Pa, ${given.code}`,
    value: result.end,
    unit: 'm',
  });
  log({
    symbol: 'L',
    formula: '(V − V_e) / (π/4 D_i²)',
    substituted: `V = ${shown(given.volumeM3)} m³, D_i = ${shown(D_i)} m`,
    value: result.length,
    unit: 'm',
  });
  log({
    symbol: 'm',
    formula: 'ρ (V_shell + V_end)',
    substituted: `ρ = ${shown(given.densityKgPerM3)} kg/m³`,
    value: result.mass,
    unit: 'kg',
  });
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
    const { innerDiameterM: D_i, corrosionAllowanceM: c = 0, thicknessStepM: step = usualStep } = given;
    const stress = given.allowableStressPa * (given.jointEfficiency ?? 1);
    const bore = D_i + 2 * c;
    const shell = wallNeed(
      cylinderRules,
      { code: given.code, pressure: given.pressurePaGauge, stress },
      (k) => bore * k,
    );
    if (!shell.ok) return shell;
    const wallThicknessM = Math.max(step, roundUpTo((bore * (shell.value.value - 1)) / 2 + c, step));
    const end = endWall(given, wallThicknessM, step);
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
    const massKg = (geometry.shellVolume + geometry.endWallVolume) * given.densityKgPerM3;
    const blankMassKg = massKg * (given.blankFactor ?? usualBlankFactor);
    if (log !== undefined) {
      explain(
        given,
        { wall: wallThicknessM, end: endThicknessM, length: cylinderLengthM, mass: massKg },
        log,
      );
      log(
        formulaStep({
          symbol: 'm_b',
          formula: 'n_b · m',
          where: { n_b: given.blankFactor ?? usualBlankFactor, m: massKg },
          value: blankMassKg,
          unit: 'kg',
          note: given.blankFactor === undefined ? 'blank factor: common practice' : undefined,
        }),
      );
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
      shellMethod: shell.value.branch.method,
    });
  },
});
