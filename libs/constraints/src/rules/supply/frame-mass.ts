import { known, notApplicable } from '../../figure.js';
import { sumRule } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const frameMass = sumRule({
  id: 'supply.frame-mass',
  title: 'Frame carries vessel, cover, drive and batch',
  group: 'supply',
  kind: 'hard',
  unit: 'kg',
  utilisation: 'ratio',
  over: 'every set',
  terms: ['vessel', 'cover', 'closure', 'stirrer', 'shaft', 'coupling', 'drive', 'heater', 'coil', 'shield'],
  conditions: ['batchVolumeM3', 'densityKgPerM3'],
  term: (part) => part.massKg,
  constant: ({ batchVolumeM3, densityKgPerM3 }) => (batchVolumeM3 ?? 0) * (densityKgPerM3 ?? 1000),
  limitOf: { frame: ['maxMassKg'] },
  limit: ({ frame }) => (frame.maxMassKg > 0 ? known(frame.maxMassKg) : notApplicable),
  say: ({ demand, limit, parts }) => `${demand} hang on ${parts.frame.name}, which carries ${limit}.`,
  source: [commonPractice('sum of the masses on the frame')],
});
