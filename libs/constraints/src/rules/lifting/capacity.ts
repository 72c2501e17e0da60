import { batchConditions, batchMass } from '../../batch-mass.js';
import { known, notApplicable } from '../../figure.js';
import { sumRule } from '../../rule.js';
import { commonPractice } from '../../source.js';

const coverParts = [
  'cover',
  'stirrer',
  'shaft',
  'coupling',
  'relief',
  'pressureGauge',
  'temperatureProbe',
  'coil',
  'condenser',
  'portPiece',
  'charging',
  'drive',
] as const;

export const coverLiftCapacity = sumRule({
  id: 'lifting.cover-capacity',
  title: 'Lift carries the cover with all that hangs on it',
  group: 'lifting',
  kind: 'hard',
  unit: 'kg',
  utilisation: 'ratio',
  over: 'one vessel',
  terms: coverParts,
  conditions: [],
  term: (part) => part.massKg,
  limitOf: { lift: ['moves', 'capacityKg'] },
  limit: ({ lift }) => (lift?.moves === 'cover' ? known(lift.capacityKg) : notApplicable),
  say: ({ demand, limit, parts }) =>
    `Cover, drive and internals weigh ${demand}; ${parts.lift?.name ?? 'the lift'} carries ${limit}.`,
  source: [commonPractice('handled mass of the cover side')],
});

export const vesselLiftCapacity = sumRule({
  id: 'lifting.vessel-capacity',
  title: 'Lift carries the full vessel',
  group: 'lifting',
  kind: 'hard',
  unit: 'kg',
  utilisation: 'ratio',
  over: 'one vessel',
  terms: ['vessel', 'heater', 'bottomValve'],
  conditions: batchConditions,
  term: (part) => part.massKg,
  constant: batchMass,
  limitOf: { lift: ['moves', 'capacityKg'] },
  limit: ({ lift }) => (lift?.moves === 'vessel' ? known(lift.capacityKg) : notApplicable),
  say: ({ demand, limit, parts }) =>
    `The vessel with its batch weighs ${demand}; ${parts.lift?.name ?? 'the lift'} carries ${limit}.`,
  source: [commonPractice('handled mass of the vessel side')],
});
