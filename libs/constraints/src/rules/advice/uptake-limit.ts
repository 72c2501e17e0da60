import { gasUptakeLimit } from '@flangewise/engineering';
import { type Judgement, reckon } from '../../figure.js';
import { judgement } from '../../rule.js';
import { fromMemory, published } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';
import { isPerGas } from '../heat/reaction-heat.js';
import { coolerConditions, coolerReads, removableW } from '../heat/removable.js';

export const uptakeLimitAdvice = judgement({
  id: 'heat.uptake-limit',
  title: 'Gas uptake that the cooling allows',
  group: 'heat',
  kind: 'advice',
  unit: 'mol/s',
  of: coolerReads,
  conditions: [
    'heatOfReactionJPerMol',
    'heatOfReactionPer',
    'gases',
    'peakUptakeMolPerS',
    ...coolerConditions,
  ],
  judge: (parts, conditions, proof): Judgement | undefined => {
    const { heatOfReactionJPerMol, peakUptakeMolPerS } = conditions;
    if (heatOfReactionJPerMol === undefined || heatOfReactionJPerMol >= 0 || !isPerGas(conditions))
      return undefined;
    const removed = removableW(parts, conditions, proof);
    if (removed === undefined || removed <= 0) return undefined;
    const limit = reckon(
      gasUptakeLimit,
      { removableW: removed, reactionEnthalpyJPerMol: heatOfReactionJPerMol },
      proof,
    );
    if (!limit.ok) return undefined;
    const { uptakeMolPerS } = limit.value;
    const text = `The cooling of ${parts.vessel.name} takes away ${shownQuantity(removed, 'W', 'down')} at the usual temperature, which allows an uptake of ${shownQuantity(uptakeMolPerS, 'mol/s', 'down')} at most: limit the gas feed to it.`;
    return {
      status:
        peakUptakeMolPerS !== undefined && peakUptakeMolPerS > uptakeMolPerS ? 'met with caution' : 'met',
      text,
      limit: uptakeMolPerS,
      ...(peakUptakeMolPerS === undefined ? {} : { demand: peakUptakeMolPerS }),
    };
  },
  met: 'No gas is taken up with heat.',
  source: [
    published('stoessel-2008 ch. 5'),
    fromMemory('lower ends of overall coefficients, as for the removal of heat'),
  ],
});
