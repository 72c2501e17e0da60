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
  limitOf: { gasSupply: ['maxOutletPressurePaGauge'] },
  conditions: ['pressureMaxPaGauge', 'gases'],
  demand: (_, { pressureMaxPaGauge, gases }) =>
    pressureMaxPaGauge === undefined || gases.length === 0 ? notApplicable : known(pressureMaxPaGauge),
  limit: ({ gasSupply }) => (gasSupply === null ? notApplicable : known(gasSupply.maxOutletPressurePaGauge)),
  say: ({ demand, limit, parts }) =>
    `${demand} are wanted; ${parts.gasSupply?.name ?? 'the gas supply'} delivers up to ${limit}.`,
  source: [commonPractice('the supply has to exceed the process pressure')],
});
