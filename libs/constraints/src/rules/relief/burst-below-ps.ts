import { known } from '../../figure.js';
import { comparison } from '../../rule.js';
import { published } from '../../source.js';
import { burstReads, highestPressurePaGauge } from './highest-pressure.js';

export const burstBelowPs = comparison({
  id: 'relief.burst-below-ps',
  title: 'Disc bursts at PS of the vessel or below',
  group: 'relief',
  kind: 'hard',
  unit: 'Pa',
  utilisation: 'ratio',
  cautionFrom: 1.01,
  demandOf: { relief: burstReads },
  limitOf: { vessel: ['rating'] },
  conditions: [],
  demand: ({ relief }) => known(highestPressurePaGauge(relief)),
  limit: ({ vessel }) => known(vessel.rating?.maxPressurePaGauge ?? 0),
  say: ({ demand, limit, parts }) =>
    `${parts.relief.name} bursts at ${demand} at the latest; PS of ${parts.vessel.name} is ${limit}.`,
  source: [published('2014/68/EU annex I 2.11.2'), published('EN ISO 4126-2')],
});
