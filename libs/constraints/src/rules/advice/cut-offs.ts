import { caution, type Judgement } from '../../figure.js';
import { isFlammable, isToxicGas } from '../../media-hazards.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

/** What has to act by itself when something fails; the parts of the range carry it, the site wires it. */
export const cutOffs = judgement({
  id: 'protection.cut-offs',
  title: 'Cut-offs, alarms and fail-safe positions',
  group: 'protection',
  kind: 'advice',
  of: { pressureGauge: ['transmitter'], coupling: ['kind'] },
  conditions: ['media', 'exothermic', 'selfReactive'],
  judge: ({ pressureGauge, coupling }, { media, exothermic, selfReactive }): Judgement | undefined => {
    const gases = media.filter((m) => m.role === 'gas');
    const reacts = exothermic === true || selfReactive === true;
    if (gases.length === 0 && !reacts) return undefined;
    const closes =
      gases.length === 0 ? 'the heating' : `${gases.map((gas) => gas.name).join(', ')} and the heating`;
    const isDangerous = gases.some((gas) => isToxicGas(gas) || isFlammable(gas));
    const text = `A pressure cut-off, independent of the controller, closes ${closes}; alarms tell of a slipping coupling (${coupling.name}) and of lost cooling${reacts ? ', and stop the feed' : ''}. Without power: gas shut, heat off, cooling on${isDangerous ? ', vent to the safe place' : ''}.`;
    return pressureGauge.transmitter
      ? { status: 'met', text }
      : caution(`${text} ${pressureGauge.name} gives no signal for it: add a switch or take a transmitter.`);
  },
  met: 'Nothing has to be cut off.',
  source: [commonPractice('pressure cut-off, alarms for slip and loss of cooling, fail-safe positions')],
});
