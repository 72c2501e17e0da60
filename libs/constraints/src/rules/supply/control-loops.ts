import { known } from '../../figure.js';
import { comparison } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const controlLoops = comparison({
  id: 'supply.control-loops',
  title: 'Controller runs all vessels that work at once',
  group: 'supply',
  kind: 'hard',
  unit: '1',
  utilisation: 'ratio',
  cautionFrom: 1.01,
  demandOf: {},
  limitOf: { control: ['loops'] },
  conditions: ['vesselsAtOnce'],
  demand: (_, { vesselsAtOnce }) => known(vesselsAtOnce),
  limit: ({ control }) => known(control.loops),
  say: ({ demand, limit, parts }) => `${demand} vessels work at once; ${parts.control.name} runs ${limit}.`,
  source: [commonPractice('one loop a vessel')],
});
