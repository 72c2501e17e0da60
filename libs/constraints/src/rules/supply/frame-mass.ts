import { batchConditions, batchMass } from '../../batch-mass.js';
import { known, notApplicable } from '../../figure.js';
import { sumRule } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const frameMass = sumRule({
  id: 'supply.frame-mass',
  title: 'Frame carries vessels, covers, drive and batches',
  group: 'supply',
  kind: 'hard',
  unit: 'kg',
  utilisation: 'ratio',
  over: 'vessels at once',
  terms: ['vessel', 'cover', 'closure', 'stirrer', 'shaft', 'coupling', 'drive', 'heater', 'coil', 'shield'],
  conditions: batchConditions,
  term: (part) => part.massKg,
  constant: batchMass,
  limitOf: { frame: ['maxMassKg'] },
  limit: ({ frame }) => (frame.maxMassKg > 0 ? known(frame.maxMassKg) : notApplicable),
  say: ({ demand, limit, parts }) => `${demand} in all hang on ${parts.frame.name}, which carries ${limit}.`,
  source: [commonPractice('sum of the masses on the frame')],
});
