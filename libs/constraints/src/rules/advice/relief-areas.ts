import { worstInflow } from '@flangewise/engineering';
import { type Judgement, reckon } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice, published } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';
import { gasFeedConditions, gasFeedOf, relievingPressurePaAbs } from '../relief/gas-feed.js';
import { liquidConditions, liquidScenarios } from '../relief/worst-area.js';

/** Gas, fire and expansion: partial answers, shown also where a runaway makes relief not decidable. */
export const reliefAreas = judgement({
  id: 'relief.partial-areas',
  title: 'Relief areas for gas, fire and expansion',
  group: 'relief',
  kind: 'advice',
  unit: 'm2',
  of: {
    vessel: ['geometry', 'innerVolumeL'],
    relief: ['burstPressurePaGauge', 'tolerance', 'areaM2'],
    gasSupply: ['flowCoefficientKv'],
    heater: ['powerW'],
    circulator: ['heatingPowerW'],
  },
  conditions: [...new Set([...gasFeedConditions, ...liquidConditions])],
  judge: (parts, conditions, proof): Judgement | undefined => {
    const { vessel, relief, gasSupply, heater, circulator } = parts;
    const relieving = relievingPressurePaAbs(relief);
    const feed = gasFeedOf(gasSupply, conditions);
    const heatInputW = heater?.powerW ?? circulator?.heatingPowerW;
    const inflow = reckon(
      worstInflow,
      {
        relievingPressurePaAbs: relieving,
        ...(feed.kind === 'feed' ? feed.supply : {}),
        ...liquidScenarios({ vessel, relievingPressurePaAbs: relieving, heatInputW }, conditions, proof),
      },
      proof,
    );
    if (!inflow.ok) return undefined;
    const { gasSupplyAreaM2, fireAreaM2, expansionAreaM2, governing, areaM2, notComputed } = inflow.value;
    const areas = [
      ...(gasSupplyAreaM2 === undefined
        ? []
        : [`regulator failed open ${shownQuantity(gasSupplyAreaM2, 'm2', 'up')}`]),
      ...(fireAreaM2 === undefined ? [] : [`fire ${shownQuantity(fireAreaM2, 'm2', 'up')}`]),
      ...(expansionAreaM2 === undefined
        ? []
        : [`thermal expansion ${shownQuantity(expansionAreaM2, 'm2', 'up')}`]),
    ];
    const left = notComputed
      .map((n) => n.scenario)
      .filter(
        (scenario) =>
          scenario !== 'runaway reaction' && (scenario !== 'gas supply' || feed.kind !== 'no gas'),
      );
    const open = left.length === 0 ? '' : ` Not computed for want of data: ${left.join(', ')}.`;
    if (areaM2 === undefined || areas.length === 0) return undefined;
    const isEnough = areaM2 <= relief.areaM2;
    const text = `${relief.name} gives ${shownQuantity(relief.areaM2, 'm2', 'down')}. Asked for: ${areas.join(', ')}; ${governing} governs${isEnough ? '' : ', and the disc is smaller: exclude the case or take a larger disc'}.${open} A runaway reaction is not among them.`;
    return {
      status: isEnough ? 'met' : 'met with caution',
      text,
      demand: areaM2,
      limit: relief.areaM2,
      utilisation: areaM2 / relief.areaM2,
    };
  },
  met: 'Nothing flows in.',
  source: [
    published('API 521 causes of overpressure'),
    published('API 520 part I'),
    published('IEC 60534-2-1'),
    commonPractice('bare vessel, inadequate drainage, k 1 for vapour: the careful side'),
  ],
});
