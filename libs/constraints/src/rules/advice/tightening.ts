import { boltedCover, boltProofStress } from '@flangewise/engineering';
import { type Judgement, reckon } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice, published } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';
import { burstReads, highestPressurePaGauge } from '../relief/highest-pressure.js';
import { boltStressPa, gasketFace, gasketReads } from '../closure/bolting.js';

const megapascal = (pa: number): string => `${String(Math.ceil(pa / 1e6))} MPa`;

export const tighteningAdvice = judgement({
  id: 'closure.tightening',
  title: 'Tightening of the bolts',
  group: 'closure',
  kind: 'advice',
  unit: 'MPa',
  of: { closure: ['bolts'], seal: gasketReads, relief: burstReads },
  conditions: [],
  judge: ({ closure, seal, relief }, _, proof): Judgement | undefined => {
    if (closure.bolts === null) return undefined;
    const { count, diameterM, pitchM } = closure.bolts;
    const strength = reckon(boltProofStress, { boltClass: '8.8', diameterM }, proof);
    if (!strength.ok) return undefined;
    const tightened = reckon(
      boltedCover,
      {
        ...gasketFace(seal),
        pressurePaGauge: highestPressurePaGauge(relief),
        boltCount: count,
        boltDiameterM: diameterM,
        boltPitchM: pitchM,
        boltAssemblyStressPa: boltStressPa,
        boltOperatingStressPa: boltStressPa,
        boltProofStressPa: strength.value.proofStressPa,
      },
      proof,
    );
    if (!tightened.ok) return undefined;
    const { torqueNm, highestBoltStressPa } = tightened.value;
    const { proofStressPa } = strength.value;
    const text = `Tighten the ${String(count)} bolts of ${closure.name} crosswise, lubricated, for the pressure at which the disc opens, with ${shownQuantity(torqueNm, 'N.m', 'up')} each; with the scatter of a torque wrench the tightest reaches ${megapascal(highestBoltStressPa)} of ${megapascal(proofStressPa)} (class 8.8).`;
    return {
      status: highestBoltStressPa <= proofStressPa ? 'met' : 'met with caution',
      text,
      demand: highestBoltStressPa / 1e6,
      limit: proofStressPa / 1e6,
      utilisation: highestBoltStressPa / proofStressPa,
    };
  },
  met: 'The closure has no bolts.',
  source: [
    published('asme-viii-1 appendix 2-5'),
    published('iso-898-1:2013'),
    commonPractice('nut factor 0.16, lubricated; torque wrench within 25 %'),
  ],
});
