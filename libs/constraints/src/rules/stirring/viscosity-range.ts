import { known, missing } from '../../figure.js';
import { comparison } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const stirrerViscosity = comparison({
  id: 'stirring.viscosity',
  title: 'Stirrer moves the batch at its thickest',
  group: 'stirring',
  kind: 'hard',
  unit: 'Pa.s',
  utilisation: 'ratio',
  cautionFrom: 1.01,
  demandOf: {},
  limitOf: { stirrer: ['maxViscosityPaS'] },
  conditions: ['viscosityMaxPaS'],
  demand: (_, { viscosityMaxPaS }) =>
    viscosityMaxPaS === undefined ? missing('process.viscosity') : known(viscosityMaxPaS),
  limit: ({ stirrer }) => known(stirrer.maxViscosityPaS),
  say: ({ demand, limit, parts }) =>
    `The batch reaches ${demand}; ${parts.stirrer.name} is meant for up to ${limit}.`,
  source: [commonPractice('usual viscosities of impeller types')],
});
