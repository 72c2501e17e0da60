import { adiabaticRise } from '@flangewise/engineering';
import { caution, type Judgement, reckon } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice, published } from '../../source.js';
import { shownDifference, shownQuantity } from '../../shown-quantity.js';
import { isPerGas } from '../heat/reaction-heat.js';

/** Screening only: where cooling fails, the batch goes this much higher, before any decomposition adds to it. */
export const adiabaticRiseAdvice = judgement({
  id: 'heat.adiabatic-rise',
  title: 'Adiabatic temperature rise',
  group: 'heat',
  kind: 'advice',
  unit: 'K',
  of: { vessel: ['rating'] },
  conditions: [
    'concentrationMolPerM3',
    'heatOfReactionJPerMol',
    'heatOfReactionPer',
    'gases',
    'densityKgPerM3',
    'heatCapacityJPerKgK',
    'temperatureUsualK',
    'temperatureMaxK',
  ],
  judge: ({ vessel }, conditions, proof): Judgement | undefined => {
    const { concentrationMolPerM3, heatOfReactionJPerMol, densityKgPerM3, heatCapacityJPerKgK } = conditions;
    if (heatOfReactionJPerMol === undefined || heatOfReactionJPerMol >= 0) return undefined;
    if (concentrationMolPerM3 === undefined) return undefined;
    if (isPerGas(conditions)) {
      return caution(
        'The heat counts per mole of gas, the concentration per mole of what is dissolved: the adiabatic rise needs the moles of gas that one mole takes up.',
      );
    }
    if (densityKgPerM3 === undefined || heatCapacityJPerKgK === undefined) return undefined;
    const rise = reckon(
      adiabaticRise,
      {
        concentrationMolPerM3,
        reactionEnthalpyJPerMol: heatOfReactionJPerMol,
        densityKgPerM3,
        heatCapacityJPerKgK,
      },
      proof,
    );
    if (!rise.ok) return undefined;
    // Cooling may fail at the hottest moment.
    const from = conditions.temperatureMaxK ?? conditions.temperatureUsualK;
    const { temperatureRiseK } = rise.value;
    const shown = `Without cooling the batch would rise by ${shownDifference(temperatureRiseK, 'up')}`;
    const ts = vessel.rating?.maxTemperatureK;
    if (from === undefined || ts === undefined) return { status: 'met', text: `${shown}.` };
    const reached = from + temperatureRiseK;
    const figures = { demand: reached, limit: ts };
    const text = `${shown} to ${shownQuantity(reached, 'K', 'up')}; TS of ${vessel.name} is ${shownQuantity(ts, 'K', 'down')}.`;
    return reached <= ts
      ? { status: 'met', text, ...figures }
      : { ...caution(`${text} Feed slowly, so that only what has reacted is in the vessel.`), ...figures };
  },
  met: 'The reaction gives no heat.',
  source: [
    published('stoessel-2008 ch. 3'),
    commonPractice('a screening figure: it does not replace calorimetry'),
  ],
});
