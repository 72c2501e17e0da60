import type { Judgement } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice, published } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';
import { heatingConditions, heatingReads, heatUpTime } from '../heat/heat-up-time.js';

export const heatUpAdvice = judgement({
  id: 'heat.heat-up',
  title: 'Time to heat the batch',
  group: 'heat',
  kind: 'advice',
  unit: 's',
  of: heatingReads,
  conditions: ['heatUpTimeS', ...heatingConditions],
  judge: (parts, conditions, proof): Judgement | undefined => {
    if (conditions.heatUpTimeS !== undefined) return undefined;
    const heating = heatUpTime(parts, conditions, proof);
    const source = parts.vessel.jacket === null ? parts.heater?.name : parts.circulator?.name;
    switch (heating.kind) {
      case 'no heating':
      case 'missing':
        return undefined;
      case 'never':
        return {
          status: 'met with caution',
          text: `${source ?? 'The heating'} does not bring ${parts.vessel.name} with its batch to the highest temperature: ${heating.because}.`,
        };
      case 'time':
        return {
          status: 'met',
          text: `${source ?? 'The heating'} brings ${parts.vessel.name} with its batch to ${shownQuantity(conditions.temperatureMaxK ?? 0, 'K')} in about ${shownQuantity(heating.timeS, 's', 'up')} (limited by ${heating.limitedBy}).`,
          demand: heating.timeS,
        };
    }
  },
  met: 'Nothing is heated.',
  source: [published('kern-1950 ch. 18'), commonPractice('vessel follows the batch; 30 mm of insulation')],
});
