import { dischargedArea } from '@flangewise/engineering';
import { known, missing, notApplicable, reckon } from '../../figure.js';
import { comparison } from '../../rule.js';
import { commonPractice, published } from '../../source.js';
import { gasFeedConditions, gasFeedOf, relievingPressurePaAbs } from './gas-feed.js';

export const reliefGasArea = comparison({
  id: 'relief.gas-area',
  title: 'Disc passes the gas of a regulator failed open',
  group: 'relief',
  kind: 'hard',
  unit: 'm2',
  utilisation: 'ratio',
  demandOf: {
    gasSupply: ['flowCoefficientKv'],
    relief: ['burstPressurePaGauge', 'tolerance'],
  },
  limitOf: { relief: ['areaM2'] },
  conditions: [...gasFeedConditions, 'temperatureMaxK'],
  demand: ({ gasSupply, relief }, conditions, proof) => {
    const feed = gasFeedOf(gasSupply, conditions);
    switch (feed.kind) {
      case 'no gas':
        return notApplicable;
      case 'missing':
        return missing(...feed.fields);
      case 'feed': {
        const relieving = relievingPressurePaAbs(relief);
        if (feed.supply.supplyPressurePaAbs <= relieving) return known(0);
        const area = reckon(
          dischargedArea,
          {
            ...feed.supply,
            relievingPressurePaAbs: relieving,
            // Gas that leaves a hot vessel is as hot as the vessel, and takes more room.
            ...(conditions.temperatureMaxK === undefined
              ? {}
              : { relievingTemperatureK: conditions.temperatureMaxK }),
          },
          proof,
        );
        return area.ok ? known(area.value.areaM2) : missing(area.error.message);
      }
    }
  },
  limit: ({ relief }) => known(relief.areaM2),
  say: ({ demand, limit, parts }) =>
    `With the regulator failed open the gas asks for ${demand}; ${parts.relief.name} gives ${limit}.`,
  source: [
    published('IEC 60534-2-1'),
    published('API 520 part I'),
    commonPractice('regulator failed open as the worst gas inflow; x_T 0.72, k 1.4'),
  ],
});
