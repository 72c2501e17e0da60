import { met, notMet } from '../../figure.js';
import { partRule } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const partOfFamily = partRule({
  id: 'supply.family',
  title: 'Parts are made for the family of the vessel',
  group: 'supply',
  kind: 'hard',
  each: [
    'closure',
    'cover',
    'stirrer',
    'shaft',
    'baffles',
    'coupling',
    'heater',
    'coil',
    'temperatureProbe',
    'relief',
    'ventLine',
    'pressureGauge',
    'gasLimit',
    'gasInlet',
    'sampling',
    'bottomValve',
    'sightGlass',
    'charging',
    'condenser',
    'portPiece',
    'basket',
    'processProbe',
    'shield',
    'frame',
    'lift',
    'drive',
    'circulator',
    'control',
  ],
  reads: ['families'],
  beside: { vessel: ['family'] },
  conditions: [],
  judge: (part, _, { beside: { vessel } }) =>
    part.families.includes('any') || part.families.includes(vessel.family)
      ? met
      : notMet(`${part.name} is made for ${part.families.join(', ')}, not for ${vessel.family}.`),
  met: 'Every part is made for the family of the vessel.',
  source: [commonPractice('families of the range')],
});
