import { boltLoad as boltLoadCalculation, boltStressArea } from '@flangewise/engineering';
import { known, missing, notApplicable, reckon, unverified } from '../../figure.js';
import { comparison } from '../../rule.js';
import { commonPractice, published } from '../../source.js';
import { burstReads, highestPressurePaGauge } from '../relief/highest-pressure.js';
import { boltStressPa, gasketFace, gasketReads } from './bolting.js';

export const boltLoad = comparison({
  id: 'closure.bolt-load',
  title: 'Bolts seat the gasket and hold it tight',
  group: 'closure',
  kind: 'hard',
  unit: 'N',
  utilisation: 'ratio',
  demandOf: { seal: gasketReads, relief: burstReads },
  limitOf: { closure: ['bolts'] },
  conditions: [],
  demand: ({ seal, relief }, _, proof) => {
    const load = reckon(
      boltLoadCalculation,
      { code: 'ASME VIII-1', ...gasketFace(seal), pressurePaGauge: highestPressurePaGauge(relief) },
      proof,
    );
    if (!load.ok) return missing(load.error.message);
    const highest = Math.max(load.value.operatingLoadN, load.value.seatingLoadN);
    return seal.gasketFactor > 0
      ? unverified(highest, 'The contact width of the gasket was taken as 5 mm on either side of its circle.')
      : known(highest);
  },
  limit: ({ closure }, _, proof) => {
    if (closure.bolts === null) return notApplicable;
    const { count, diameterM, pitchM } = closure.bolts;
    const area = reckon(boltStressArea, { diameterM, pitchM }, proof);
    return area.ok ? known(count * area.value.areaM2 * boltStressPa) : missing(area.error.message);
  },
  say: ({ demand, limit, parts }) =>
    `To seat ${parts.seal.name} and hold it until ${parts.relief.name} opens the bolts carry ${demand}; those of ${parts.closure.name} may carry ${limit}.`,
  source: [
    published('asme-viii-1 appendix 2-5'),
    published('iso-898-1:2013 §9.1.6.1'),
    commonPractice('allowable bolt stress of the maker'),
  ],
});
