import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity, type StepLog } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { commonPractice, published } from '../source-reference.js';
import { explainGasketLoad } from './bolt-load.js';
import { stressAreaOf } from './bolt-stress-area.js';
import {
  closureLength,
  closurePressureField,
  force,
  gasketFactorField,
  seatingStressField,
} from './closure-fields.js';
import { gasketLoad } from './gasket-load.js';

const usualNutFactor = 0.16;
/** Preload by torque wrench scatters by a quarter either way. */
const usualScatter = 0.25;

const stress = (symbol: string, description: string): z.ZodNumber =>
  quantity({ unit: 'Pa', symbol, description }, z.number().positive());

const inputs = z.strictObject({
  gasketOuterDiameterM: closureLength('D_o', 'Outer diameter of the gasket contact face'),
  gasketInnerDiameterM: closureLength('D_i', 'Inner diameter of the gasket contact face'),
  gasketFactor: gasketFactorField,
  seatingStressPa: seatingStressField,
  pressurePaGauge: closurePressureField,
  boltCount: quantity(
    { unit: '1', symbol: 'n', description: 'Number of bolts' },
    z.number().int().min(3).max(200),
  ),
  boltDiameterM: closureLength('d', 'Nominal diameter of the bolts'),
  boltPitchM: closureLength('p', 'Pitch of the thread'),
  boltAssemblyStressPa: stress('S_a', 'Allowable stress of the bolts at assembly temperature'),
  boltOperatingStressPa: stress('S_b', 'Allowable stress of the bolts at operating temperature'),
  boltProofStressPa: stress('S_p', 'Proof stress of the bolts').optional(),
  nutFactor: quantity(
    { unit: '1', symbol: 'K', description: 'Nut factor; 0.16 (lubricated) unless given' },
    z.number().min(0.05).max(0.5),
  ).optional(),
  preloadScatter: quantity(
    {
      unit: '1',
      symbol: 'ε',
      description: 'Scatter of the preload either way; 0.25 (torque wrench) unless given',
    },
    z.number().min(0).max(0.6),
  ).optional(),
});

interface BoltedResult {
  readonly boltArea: number;
  readonly requiredArea: number;
  readonly preload: number;
  readonly torque: number;
  readonly highestStress: number;
}

const explain = (given: z.output<typeof inputs>, result: BoltedResult, log: StepLog): void => {
  const { boltCount: n, boltDiameterM: d, boltPitchM: p, nutFactor: K = usualNutFactor } = given;
  const gasket = {
    outerDiameter: given.gasketOuterDiameterM,
    innerDiameter: given.gasketInnerDiameterM,
    gasketFactor: given.gasketFactor,
    seatingStress: given.seatingStressPa,
  };
  explainGasketLoad(gasket, given.pressurePaGauge, log);
  const { seating: W_m2, operating: W_m1 } = gasketLoad(gasket, given.pressurePaGauge);
  const ε = given.preloadScatter ?? usualScatter;
  log(
    formulaStep({
      symbol: 'A_b',
      formula: 'n · π / 4 · (d − 0.9382 · p)²',
      where: { n, d, p },
      value: result.boltArea,
      unit: 'm2',
    }),
  );
  log(
    formulaStep({
      symbol: 'A_m',
      formula: 'max(W_m1 / S_b, W_m2 / S_a)',
      where: { W_m1, W_m2, S_b: given.boltOperatingStressPa, S_a: given.boltAssemblyStressPa },
      value: result.requiredArea,
      unit: 'm2',
    }),
  );
  log(
    formulaStep({
      symbol: 'F',
      formula: 'max(W_m1, W_m2) / n / (1 − ε)',
      where: { W_m1, W_m2, n, ε },
      value: result.preload,
      unit: 'N',
      note: 'so that the loosest bolt still holds; scatter: common practice unless given',
    }),
  );
  log(
    formulaStep({
      symbol: 'T',
      formula: 'K · F · d',
      where: { K, F: result.preload, d },
      value: result.torque,
      unit: 'N.m',
    }),
  );
  log(
    formulaStep({
      symbol: 'σ_max',
      formula: 'n · F · (1 + ε) / A_b',
      where: { n, F: result.preload, ε, A_b: result.boltArea },
      value: result.highestStress,
      unit: 'Pa',
      note: 'tightest bolt at assembly, without torsion',
    }),
  );
};

/**
 * Bolted cover: load to seat the gasket and in operation, bolts against their allowable stress, and the tightening
 * torque with its scatter.
 *
 *   A_m = max(W_m1/S_b, W_m2/S_a)   u = A_m/A_b   W = (A_m + A_b)/2 · S_a
 *   F = max(W_m1, W_m2)/n/(1 − ε)   T = K F d   σ_max = n F (1 + ε)/A_b
 *
 * @returns loads [N], areas [m²], stresses [Pa], utilisation [-], preloadN a bolt, torqueNm [N·m], flangeDesignLoadN W;
 *   proofUtilisation σ_max/S_p where the proof stress is given
 * @range 3 to 200 bolts, pitch at most half of the diameter
 * @error CALC_OUT_OF_RANGE outside the range
 * @source asme-viii-1 appendix 2-5; iso-898-1:2013; torque and scatter: common practice
 */
export const boltedCover = calculation({
  id: 'closure.boltedCover',
  title: 'Bolts of a cover',
  inputs,
  outputs: z.strictObject({
    gasketReactionDiameterM: quantity({
      unit: 'm',
      symbol: 'G',
      description: 'Diameter of the gasket load reaction',
    }),
    seatingLoadN: force('W_m2', 'Bolt load to seat the gasket'),
    operatingLoadN: force('W_m1', 'Bolt load in operation'),
    requiredBoltAreaM2: quantity({ unit: 'm2', symbol: 'A_m', description: 'Required area of all bolts' }),
    boltAreaM2: quantity({ unit: 'm2', symbol: 'A_b', description: 'Stress area of all bolts' }),
    operatingBoltStressPa: quantity({ unit: 'Pa', symbol: 'σ_b', description: 'Bolt stress in operation' }),
    seatingBoltStressPa: quantity({
      unit: 'Pa',
      symbol: 'σ_a',
      description: 'Bolt stress to seat the gasket',
    }),
    utilisation: quantity({
      unit: '1',
      symbol: 'u',
      description: 'Required over existing bolt area; met up to 1',
    }),
    flangeDesignLoadN: force('W', 'Load for which flange and cover are designed at assembly'),
    preloadN: force('F', 'Preload to aim at, each bolt'),
    torqueNm: quantity({ unit: 'N.m', symbol: 'T', description: 'Tightening torque' }),
    highestBoltStressPa: quantity({
      unit: 'Pa',
      symbol: 'σ_max',
      description: 'Stress of the tightest bolt',
    }),
    proofUtilisation: quantity({
      unit: '1',
      symbol: 'u_p',
      description: 'Tightest bolt over proof stress',
    }).optional(),
  }),
  formula: String.raw`u = \frac{\max(W_{m1}/S_b,\ W_{m2}/S_a)}{A_b},\quad T = K\,\frac{\max(W_{m1}, W_{m2})}{n(1-\varepsilon)}\,d`,
  range:
    '3 to 200 bolts, one ring gasket inside the bolt circle, bolts alike; torsion of the bolts not counted',
  source: [
    published('asme-viii-1 appendix 2-5'),
    published('iso-898-1:2013 §9.1.6.1'),
    commonPractice('nut-factor-method; preload scatter of a torque wrench 25 %'),
  ],
  compute: (given, log) => {
    const { boltCount: n, boltDiameterM: d, boltPitchM: p } = given;
    if (given.gasketInnerDiameterM >= given.gasketOuterDiameterM) {
      return outOfRange({
        field: 'gasketInnerDiameterM',
        given: given.gasketInnerDiameterM,
        unit: 'm',
        allowed: `less than gasketOuterDiameterM (${shown(given.gasketOuterDiameterM)} m)`,
      });
    }
    if (p > d / 2) {
      return outOfRange({
        field: 'boltPitchM',
        given: p,
        unit: 'm',
        allowed: `at most half of the diameter (${shown(d / 2)} m)`,
      });
    }
    const load = gasketLoad(
      {
        outerDiameter: given.gasketOuterDiameterM,
        innerDiameter: given.gasketInnerDiameterM,
        gasketFactor: given.gasketFactor,
        seatingStress: given.seatingStressPa,
      },
      given.pressurePaGauge,
    );
    const scatter = given.preloadScatter ?? usualScatter;
    const boltArea = n * stressAreaOf(d, p);
    const requiredArea = Math.max(
      load.operating / given.boltOperatingStressPa,
      load.seating / given.boltAssemblyStressPa,
    );
    const preload = Math.max(load.operating, load.seating) / n / (1 - scatter);
    const torque = (given.nutFactor ?? usualNutFactor) * preload * d;
    const highestStress = (n * preload * (1 + scatter)) / boltArea;
    if (log !== undefined) explain(given, { boltArea, requiredArea, preload, torque, highestStress }, log);
    return succeed({
      gasketReactionDiameterM: load.reactionDiameter,
      seatingLoadN: load.seating,
      operatingLoadN: load.operating,
      requiredBoltAreaM2: requiredArea,
      boltAreaM2: boltArea,
      operatingBoltStressPa: load.operating / boltArea,
      seatingBoltStressPa: load.seating / boltArea,
      utilisation: requiredArea / boltArea,
      flangeDesignLoadN: ((requiredArea + boltArea) / 2) * given.boltAssemblyStressPa,
      preloadN: preload,
      torqueNm: torque,
      highestBoltStressPa: highestStress,
      ...(given.boltProofStressPa === undefined
        ? {}
        : { proofUtilisation: highestStress / given.boltProofStressPa }),
    });
  },
});
