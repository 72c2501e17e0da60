import { discWindow } from '@flangewise/engineering';
import { normalAtmospherePa } from '@flangewise/quantities';
import { type Judgement, reckon } from '../../figure.js';
import { judgement } from '../../rule.js';
import { published } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';

export const discOrder = judgement({
  id: 'relief.disc-window',
  title: 'Burst pressure to be ordered',
  group: 'relief',
  kind: 'advice',
  unit: 'Pa',
  of: { vessel: ['rating'], relief: ['burstPressurePaGauge', 'tolerance', 'operatingRatio'] },
  conditions: ['pressureMaxPaGauge', 'vacuum', 'temperatureMaxK'],
  judge: ({ vessel, relief }, conditions, proof): Judgement | undefined => {
    const { pressureMaxPaGauge, vacuum, temperatureMaxK } = conditions;
    if (vessel.rating === undefined || pressureMaxPaGauge === undefined) return undefined;
    const window = reckon(
      discWindow,
      {
        maxAllowablePressurePaGauge: vessel.rating.maxPressurePaGauge,
        operatingPressurePaGauge: Math.max(0, pressureMaxPaGauge),
        operatingRatio: relief.operatingRatio,
        manufacturingRangePlus: 0,
        manufacturingRangeMinus: 0,
        burstTolerance: relief.tolerance,
        ...(vacuum === true ? { lowestPressurePaGauge: -normalAtmospherePa } : {}),
      },
      proof,
    );
    if (!window.ok) return undefined;
    const { maxStampedPressurePaGauge } = window.value;
    const leastPaGauge = window.value.neededMinBurstPressurePaGauge / (1 - relief.tolerance);
    const at =
      temperatureMaxK === undefined
        ? 'at the temperature of the disc'
        : `at a disc temperature of up to ${shownQuantity(temperatureMaxK, 'K', 'up')}`;
    const span = `from ${shownQuantity(leastPaGauge, 'Pa', 'up')} to ${shownQuantity(maxStampedPressurePaGauge, 'Pa', 'down')}`;
    const isOpen = leastPaGauge <= maxStampedPressurePaGauge * (1 + 1e-12);
    return {
      status: isOpen ? 'met' : 'met with caution',
      text: isOpen
        ? `The disc may be stamped ${span} ${at}; ${relief.name} is specified for ${shownQuantity(relief.burstPressurePaGauge, 'Pa')}.`
        : `Between process and PS there is no burst pressure for ${relief.name}: ${span}. Lower the process, raise PS, or take a disc of a higher operating ratio.`,
      demand: leastPaGauge,
      limit: maxStampedPressurePaGauge,
    };
  },
  met: 'The disc has a window.',
  source: [published('ASME VIII-1 UG-127'), published('EN ISO 4126-2')],
});
