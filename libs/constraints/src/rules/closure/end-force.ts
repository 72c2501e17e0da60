import { endForce as endForceCalculation } from '@flangewise/engineering';
import { figureOf, known, missing, reckon } from '../../figure.js';
import { comparison } from '../../rule.js';
import { published } from '../../source.js';

export const endForce = comparison({
  id: 'closure.end-force',
  title: 'Closure carries the end force',
  group: 'closure',
  kind: 'hard',
  unit: 'N',
  utilisation: 'ratio',
  demandOf: { seal: ['diameterM'] },
  limitOf: { closure: ['ratedForceN'] },
  conditions: ['pressureMaxPaGauge'],
  demand: ({ seal }, { pressureMaxPaGauge }, proof) =>
    pressureMaxPaGauge === undefined
      ? missing('process.pressure.highest')
      : figureOf(
          reckon(
            endForceCalculation,
            { gasketDiameterM: seal.diameterM, pressurePaGauge: pressureMaxPaGauge },
            proof,
          ),
          (r) => r.forceN,
        ),
  limit: ({ closure }) => known(closure.ratedForceN),
  say: ({ demand, limit, parts }) =>
    `The highest pressure pushes the cover with ${demand} at the seal; ${parts.closure.name} carries ${limit}.`,
  source: [published('ASME VIII-1 appendix 2, 2-5')],
});
