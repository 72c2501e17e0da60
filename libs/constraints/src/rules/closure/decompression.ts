import { caution, met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

const elastomers: readonly string[] = ['FKM', 'FFKM', 'EPDM', 'NBR', 'silicone'];
/** Gases that dissolve in elastomers and burst them when the pressure falls fast. */
const dissolvingGases: readonly string[] = [
  'hydrogen',
  'carbon dioxide',
  'methane',
  'ethylene',
  'nitrogen',
  'helium',
];
/** Above this the damage is to be expected [Pa gauge]. */
const noticeablePaGauge = 2e6;

export const decompression = judgement({
  id: 'closure.rapid-decompression',
  title: 'Seal stands rapid gas decompression',
  group: 'closure',
  kind: 'hard',
  of: { seal: ['material', 'standsDecompression'] },
  conditions: ['gases', 'pressureMaxPaGauge'],
  judge: ({ seal }, { gases, pressureMaxPaGauge }) => {
    const gas = gases.find((g) => dissolvingGases.includes(g.toLowerCase()));
    if (gas === undefined || pressureMaxPaGauge === undefined || pressureMaxPaGauge <= noticeablePaGauge)
      return undefined;
    if (!elastomers.includes(seal.material)) return met;
    return seal.standsDecompression
      ? caution(
          `${seal.name} is an elastomer under ${gas}: of a grade for rapid gas decompression, still release the pressure slowly and inspect the ring.`,
        )
      : notMet(
          `${seal.name} is an elastomer: ${gas} dissolves in it above 20 bar(g) and bursts it when the pressure is released (rapid gas decompression).`,
        );
  },
  met: 'The seal is no elastomer, so that gas does not burst it when the pressure is released.',
  source: [commonPractice('rapid gas decompression breaks elastomers')],
});
