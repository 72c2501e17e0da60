import { ambientLoss } from '@flangewise/engineering';
import { caution, reckon } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice, fromMemory } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';

/** Metal hotter than this burns at a touch [K]; insulation of vessel and cover [m] (common practice). */
const burnsFromK = 333.15;
const insulationM = 0.03;

export const hotOutside = judgement({
  id: 'caution.hot-outside',
  title: 'Hot outer surfaces',
  group: 'protection',
  kind: 'caution',
  unit: 'K',
  of: { vessel: ['construction'] },
  conditions: ['temperatureMaxK'],
  judge: ({ vessel }, { temperatureMaxK }, proof) => {
    if (temperatureMaxK === undefined || temperatureMaxK <= burnsFromK) return undefined;
    const insulated = reckon(
      ambientLoss,
      { surfaceAreaM2: 1, innerTemperatureK: temperatureMaxK, insulationThicknessM: insulationM },
      proof,
    );
    const under = insulated.ok
      ? ` Under 30 mm of insulation the surface comes to about ${shownQuantity(insulated.value.surfaceTemperatureK, 'K', 'up')}.`
      : '';
    const means =
      vessel.construction === 'glass' ? 'a guard round jacket and hoses' : 'insulation or a guard';
    return caution(
      `Bare surfaces of ${vessel.name}, cover and lines get up to ${shownQuantity(temperatureMaxK, 'K', 'up')} hot and burn: ${means}, warning signs, gloves.${under}`,
    );
  },
  met: 'No surface burns.',
  source: [
    fromMemory('EN ISO 13732-1'),
    commonPractice('metal above about 60 °C burns at a touch; hot surfaces are ignition sources too'),
  ],
});
