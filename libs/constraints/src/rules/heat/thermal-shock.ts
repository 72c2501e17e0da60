import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { fromMemory } from '../../source.js';
import { caution } from '../../figure.js';
import { shownDifference } from '../../shown-quantity.js';

export const thermalShock = judgement({
  id: 'heat.thermal-shock',
  title: 'Glass stands the temperature difference',
  group: 'heat',
  kind: 'hard',
  unit: '1',
  of: { vessel: ['construction', 'thermalShockK'] },
  conditions: ['temperatureMinK', 'temperatureMaxK'],
  judge: ({ vessel }, { temperatureMinK, temperatureMaxK }) => {
    if (vessel.construction !== 'glass' || vessel.thermalShockK === null) return undefined;
    if (vessel.thermalShockK <= 0) return notMet(`${vessel.name} stands no temperature difference.`);
    const span = (temperatureMaxK ?? 293.15) - (temperatureMinK ?? 293.15);
    return span <= vessel.thermalShockK
      ? met
      : caution(
          `The process spans ${shownDifference(span, 'up')}; between jacket and contents ${vessel.name} stands ${shownDifference(vessel.thermalShockK, 'down')}: limit the difference in the controller and heat and cool slowly.`,
        );
  },
  met: 'The span of the process stays below the difference that the glass stands.',
  source: [fromMemory('thermal shock of borosilicate glass 3.3')],
});
