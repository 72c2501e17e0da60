import { known, notApplicable } from '../../figure.js';
import { comparison } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const gasPressure = comparison({
  id: 'supply.gas-pressure',
  title: 'Gas supply reaches the process pressure',
  group: 'supply',
  kind: 'hard',
  unit: 'Pa',
  utilisation: 'ratio',
  cautionFrom: 1.01,
  demandOf: {},
  limitOf: { gasSupply: ['maxOutletPressurePaGauge'], gasLimit: ['setPressurePaGauge'] },
  conditions: ['pressureMaxPaGauge', 'gases'],
  demand: (_, { pressureMaxPaGauge, gases }) =>
    pressureMaxPaGauge === undefined || gases.length === 0 ? notApplicable : known(pressureMaxPaGauge),
  limit: ({ gasSupply, gasLimit }) =>
    gasSupply === null
      ? notApplicable
      : known(
          Math.min(
            gasSupply.maxOutletPressurePaGauge,
            gasLimit?.setPressurePaGauge ?? Number.POSITIVE_INFINITY,
          ),
        ),
  say: ({ demand, limit, parts }) =>
    `${demand} are wanted; ${parts.gasSupply?.name ?? 'the gas supply'}${parts.gasLimit === null ? '' : ` through ${parts.gasLimit.name}`} gives up to ${limit}.`,
  source: [commonPractice('the supply has to reach the process pressure, through what limits it')],
});
