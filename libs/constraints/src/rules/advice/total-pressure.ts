import { totalPressure } from '@flangewise/engineering';
import { absoluteToGauge, formatQuantity, gaugeToAbsolute } from '@flangewise/quantities';
import { caution, type Judgement, reckon } from '../../figure.js';
import { gasesByImportance } from '../../gases-by-importance.js';
import { mainLiquid, vapourPressureAt } from '../../liquid.js';
import { judgement } from '../../rule.js';
import { commonPractice, published } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';

export const totalPressureAdvice = judgement({
  id: 'strength.total-pressure',
  title: 'Total pressure of gas and vapour',
  group: 'strength',
  kind: 'advice',
  unit: 'Pa',
  of: { vessel: ['rating'] },
  conditions: ['media', 'gases', 'statedPressurePaGauge', 'pressureMeans', 'temperatureMaxK'],
  judge: ({ vessel }, conditions, proof): Judgement | undefined => {
    const { media, statedPressurePaGauge, pressureMeans, temperatureMaxK } = conditions;
    const liquid = mainLiquid(media);
    const [gas] = gasesByImportance(conditions);
    if (liquid === undefined || gas === undefined || temperatureMaxK === undefined) return undefined;
    const vapour = vapourPressureAt(liquid, temperatureMaxK, proof);
    if (vapour === undefined || statedPressurePaGauge === undefined) return undefined;
    const total = reckon(
      totalPressure,
      {
        vapourPressurePaAbs: vapour,
        temperatureK: temperatureMaxK,
        statedPressurePaAbs: gaugeToAbsolute(statedPressurePaGauge),
        ...(pressureMeans === undefined ? {} : { statedMeans: pressureMeans }),
      },
      proof,
    );
    if (!total.ok) return undefined;
    const { gasPressureIfTotalPaAbs, totalPressureIfPartialPaAbs, highestTotalPressurePaAbs } = total.value;
    const vapourText = `${liquid.name} has ${shownQuantity(absoluteToGauge(vapour), 'Pa', 'up')} of its own at ${shownQuantity(temperatureMaxK, 'K')}`;
    const asTotal =
      gasPressureIfTotalPaAbs === undefined
        ? `${shownQuantity(statedPressurePaGauge, 'Pa')} as the total would not keep it from boiling`
        : `with ${shownQuantity(statedPressurePaGauge, 'Pa')} as the total ${gas} has ${formatQuantity(absoluteToGauge(gasPressureIfTotalPaAbs), 'pressure', { reference: 'absolute' })}`;
    const ifPartialPaGauge = absoluteToGauge(totalPressureIfPartialPaAbs);
    const asPartial = `as the pressure of ${gas} alone the total is ${shownQuantity(ifPartialPaGauge, 'Pa', 'up')}`;
    const highestPaGauge = absoluteToGauge(highestTotalPressurePaAbs);
    const ps = vessel.rating?.maxPressurePaGauge;
    const text = `${vapourText}; ${asTotal}; ${asPartial}.`;
    const figures = { demand: highestPaGauge, ...(ps === undefined ? {} : { limit: ps }) };
    return ps !== undefined && highestPaGauge > ps
      ? {
          ...caution(
            `${text} Above PS of ${vessel.name} (${shownQuantity(ps, 'Pa', 'down')}), should the gas alone be meant.`,
          ),
          ...figures,
        }
      : { status: 'met', text, ...figures };
  },
  met: 'No gas over a volatile liquid.',
  source: [published('dalton'), commonPractice('vapour pressure of a solution bounded by that of water')],
});
