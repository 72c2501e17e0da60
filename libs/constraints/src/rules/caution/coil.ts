import { boilingTemperature } from '@flangewise/engineering';
import { normalAtmospherePa } from '@flangewise/quantities';
import { caution, reckon } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';

const water = '7732-18-5';

export const coilHazards = judgement({
  id: 'caution.cooling-coil',
  title: 'A cooling coil is a hazard too',
  group: 'heat',
  kind: 'caution',
  of: { coil: ['rating'] },
  conditions: ['temperatureMaxK', 'pressureMaxPaGauge'],
  judge: ({ coil }, { temperatureMaxK, pressureMaxPaGauge }, proof) => {
    if (coil === null) return undefined;
    const boiling = reckon(
      boilingTemperature,
      { substance: water, pressurePaAbs: normalAtmospherePa },
      proof,
    );
    const boilsAtK = boiling.ok ? boiling.value.temperatureK : undefined;
    const steam =
      temperatureMaxK !== undefined && boilsAtK !== undefined && temperatureMaxK > boilsAtK
        ? ` With an open drain tap water boils in it above ${shownQuantity(boilsAtK, 'K', 'down')} (steam lock: pulses, loss of cooling): drain it while heating, open the water slowly before the batch is hot, and lead the outlet to a safe drain.`
        : '';
    const outside =
      pressureMaxPaGauge === undefined || coil.rating === undefined
        ? 'process pressure presses on it from outside'
        : `the process presses on it from outside with up to ${shownQuantity(pressureMaxPaGauge, 'Pa', 'up')} (rated ${shownQuantity(coil.rating.maxPressurePaGauge, 'Pa', 'down')})`;
    return caution(
      `${coil.name}: ${outside}, and a leak lets water into the batch or product into the water; a check valve and a break to the mains keep it from flowing back.${steam}`,
    );
  },
  met: 'No coil.',
  source: [commonPractice('pressure from outside, steam lock, leak into the batch, backflow')],
});
