import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity, type StepLog } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { outOfRange } from '../out-of-range.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';
import {
  closureLength,
  closurePressureField,
  force,
  gasketFactorField,
  seatingStressField,
} from './closure-fields.js';
import { gasketLoad, type RingGasket } from './gasket-load.js';

/** The steps from the gasket to the bolt loads. */
export const explainGasketLoad = (gasket: RingGasket, pressure: number, log: StepLog): void => {
  const { outerDiameter: D_o, innerDiameter: D_i, gasketFactor: m, seatingStress: y } = gasket;
  const load = gasketLoad(gasket, pressure);
  const { basicWidth: b_0, effectiveWidth: b, reactionDiameter: G } = load;
  const isNarrow = b_0 === b;
  log(formulaStep({ symbol: 'b_0', formula: '(D_o − D_i) / 4', where: { D_o, D_i }, value: b_0, unit: 'm' }));
  log(
    formulaStep({
      symbol: 'b',
      formula: isNarrow ? 'b_0' : '√(0.00635 · b_0)',
      where: { b_0 },
      value: b,
      unit: 'm',
      note: isNarrow ? 'b_0 ≤ 6.35 mm' : 'b_0 > 6.35 mm',
    }),
  );
  log(
    formulaStep({
      symbol: 'G',
      formula: isNarrow ? '(D_o + D_i) / 2' : 'D_o − 2 · b',
      where: { D_o, D_i, b },
      value: G,
      unit: 'm',
    }),
  );
  log(
    formulaStep({
      symbol: 'W_m2',
      formula: 'π · b · G · y',
      where: { b, G, y },
      value: load.seating,
      unit: 'N',
    }),
  );
  log(
    formulaStep({
      symbol: 'W_m1',
      formula: 'π / 4 · G² · P + 2 · b · π · G · m · P',
      where: { G, P: pressure, b, m },
      value: load.operating,
      unit: 'N',
    }),
  );
};

/**
 * Bolt load of a ring gasket of rectangular section: to seat it, and in operation.
 *
 *   W_m2 = π b G y    W_m1 = π/4 G² P + 2 b π G m P
 *
 * @returns gasketReactionDiameterM G [m], seatingLoadN W_m2 [N], operatingLoadN W_m1 [N]
 * @range 0 < D_i < D_o
 * @error CALC_OUT_OF_RANGE outside the range
 * @source asme-viii-1 appendix 2-5, table 2-5.2 (facing sketch 1a)
 */
export const boltLoad = calculation({
  id: 'closure.boltLoad',
  title: 'Bolt load of a gasketed closure',
  inputs: z.strictObject({
    code: z.literal('ASME VIII-1').meta({ description: 'Code of the gasket factors and widths' }),
    gasketOuterDiameterM: closureLength('D_o', 'Outer diameter of the gasket contact face'),
    gasketInnerDiameterM: closureLength('D_i', 'Inner diameter of the gasket contact face'),
    gasketFactor: gasketFactorField,
    seatingStressPa: seatingStressField,
    pressurePaGauge: closurePressureField,
  }),
  outputs: z.strictObject({
    gasketReactionDiameterM: quantity({
      unit: 'm',
      symbol: 'G',
      description: 'Diameter of the gasket load reaction',
    }),
    operatingLoadN: force('W_m1', 'Bolt load in operation'),
    seatingLoadN: force('W_m2', 'Bolt load to seat the gasket'),
  }),
  formula: String.raw`W_{m1} = \tfrac{\pi}{4} G^2 P + 2 b \pi G m P,\quad W_{m2} = \pi b G y`,
  range: '0 < inner < outer gasket diameter; one ring gasket of rectangular section, no partition ribs',
  source: [published('asme-viii-1 appendix 2-5, table 2-5.2')],
  compute: (inputs, log) => {
    if (inputs.gasketInnerDiameterM >= inputs.gasketOuterDiameterM) {
      return outOfRange({
        field: 'gasketInnerDiameterM',
        given: inputs.gasketInnerDiameterM,
        unit: 'm',
        allowed: `less than gasketOuterDiameterM (${shown(inputs.gasketOuterDiameterM)} m)`,
      });
    }
    const gasket = {
      outerDiameter: inputs.gasketOuterDiameterM,
      innerDiameter: inputs.gasketInnerDiameterM,
      gasketFactor: inputs.gasketFactor,
      seatingStress: inputs.seatingStressPa,
    };
    if (log !== undefined) explainGasketLoad(gasket, inputs.pressurePaGauge, log);
    const load = gasketLoad(gasket, inputs.pressurePaGauge);
    return succeed({
      gasketReactionDiameterM: load.reactionDiameter,
      operatingLoadN: load.operating,
      seatingLoadN: load.seating,
    });
  },
});
