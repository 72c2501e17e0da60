import { isAtMost } from '../../compare.js';
import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';

/** Impeller over vessel diameter between which each kind works; anchors and ribbons sweep the wall. */
const sweeping = { least: 0.85, most: 0.995 };
const free = { least: 0.25, most: 0.75 };

const sharesOf = (impeller: string): { readonly least: number; readonly most: number } =>
  impeller === 'anchor' || impeller.endsWith('ribbon') ? sweeping : free;

export const stirrerFits = judgement({
  id: 'stirring.stirrer-fits',
  title: 'Stirrer fits into the vessel',
  group: 'stirring',
  kind: 'hard',
  unit: 'm',
  of: { vessel: ['geometry'], stirrer: ['diameterM', 'impeller'] },
  conditions: [],
  judge: ({ vessel, stirrer }) => {
    const share = stirrer.diameterM / vessel.geometry.innerDiameterM;
    const { least, most } = sharesOf(stirrer.impeller);
    const shown = `${stirrer.name} measures ${shownQuantity(stirrer.diameterM, 'm')}; ${vessel.name} is ${shownQuantity(vessel.geometry.innerDiameterM, 'm')} wide`;
    if (!isAtMost(share, most)) return notMet(`${shown}.`);
    return isAtMost(least, share) ? met : notMet(`${shown}: too small to reach its contents.`);
  },
  met: 'The stirrer goes into the vessel and reaches its contents.',
  source: [
    commonPractice('a quarter to three quarters of the vessel diameter; anchors and ribbons 85 to 99.5 %'),
  ],
});
