import { caution, met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

const elastomers: readonly string[] = ['FKM', 'FFKM', 'EPDM', 'NBR', 'silicone'];
/** Every gas dissolves in elastomers; above this it bursts them when the pressure falls fast [Pa gauge]. */
const noticeablePaGauge = 2e6;

export const decompression = judgement({
  id: 'closure.rapid-decompression',
  title: 'Seal stands rapid gas decompression',
  group: 'closure',
  kind: 'hard',
  of: { seal: ['material', 'standsDecompression'] },
  conditions: ['gases', 'pressureMaxPaGauge'],
  judge: ({ seal }, { gases, pressureMaxPaGauge }) => {
    if (gases.length === 0 || pressureMaxPaGauge === undefined || pressureMaxPaGauge <= noticeablePaGauge)
      return undefined;
    const gas = gases.join(', ');
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
