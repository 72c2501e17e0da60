import { endForce as endForceCalculation } from '@flangewise/engineering';
import { figureOf, known, reckon } from '../../figure.js';
import { comparison } from '../../rule.js';
import { published } from '../../source.js';
import { burstReads, highestPressurePaGauge } from '../relief/highest-pressure.js';

export const endForce = comparison({
  id: 'closure.end-force',
  title: 'Closure carries the end force',
  group: 'closure',
  kind: 'hard',
  unit: 'N',
  utilisation: 'ratio',
  demandOf: { seal: ['diameterM'], relief: burstReads },
  limitOf: { closure: ['ratedForceN'] },
  conditions: [],
  demand: ({ seal, relief }, _, proof) =>
    figureOf(
      reckon(
        endForceCalculation,
        { gasketDiameterM: seal.diameterM, pressurePaGauge: highestPressurePaGauge(relief) },
        proof,
      ),
      (r) => r.forceN,
    ),
  limit: ({ closure }) => known(closure.ratedForceN),
  say: ({ demand, limit, parts }) =>
    `Until ${parts.relief.name} opens, the pressure pushes the cover with up to ${demand} at the seal; ${parts.closure.name} carries ${limit}.`,
  source: [published('ASME VIII-1 appendix 2, 2-5')],
});
