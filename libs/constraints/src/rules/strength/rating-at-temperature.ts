import { specialEndPaGauge } from '@flangewise/catalogue';
import { type Figure, known, missing } from '../../figure.js';
import { comparison } from '../../rule.js';
import { published } from '../../source.js';
import { carriedPressure, wallReads } from './carried-pressure.js';
import { specialReach } from './part-pressure.js';

/** A vessel at the end of the range may be made thicker as a special, subject to review. */
const orSpecial = (carried: Figure, psPaGauge: number | undefined): Figure =>
  carried.kind === 'known' && (psPaGauge ?? 0) >= specialEndPaGauge
    ? { ...carried, special: carried.value * specialReach }
    : carried;

export const ratingAtTemperature = comparison({
  id: 'strength.rating-at-temperature',
  title: 'Wall of the vessel carries the pressure at temperature',
  group: 'strength',
  kind: 'hard',
  unit: 'Pa',
  utilisation: 'ratio',
  demandOf: {},
  limitOf: { vessel: wallReads },
  conditions: ['pressureMaxPaGauge', 'temperatureMaxK'],
  demand: (_, { pressureMaxPaGauge }) =>
    pressureMaxPaGauge === undefined ? missing('process.pressure.highest') : known(pressureMaxPaGauge),
  limit: ({ vessel }, { temperatureMaxK }, proof) => {
    const temperatureK = temperatureMaxK ?? vessel.rating?.maxTemperatureK;
    return temperatureK === undefined
      ? missing('process.temperature.highest')
      : orSpecial(carriedPressure(vessel, temperatureK, proof), vessel.rating?.maxPressurePaGauge);
  },
  say: ({ demand, limit, parts }) =>
    `The process reaches ${demand}; shell and end of ${parts.vessel.name}, recomputed for the highest temperature, carry ${limit}.`,
  source: [published('en-13445-3:2021 §6, §7'), published('EN 1595'), published('2014/68/EU annex I 7.1')],
});

/** PS stands on the plate: whatever the process, the wall has to carry it at TS. */
export const declaredPressure = comparison({
  id: 'strength.declared-pressure',
  title: 'Wall of the vessel carries its PS at TS',
  group: 'strength',
  kind: 'hard',
  unit: 'Pa',
  utilisation: 'ratio',
  cautionFrom: 1.01,
  demandOf: { vessel: ['rating'] },
  limitOf: { vessel: wallReads },
  conditions: [],
  demand: ({ vessel }) =>
    vessel.rating === undefined ? missing('PS of the vessel') : known(vessel.rating.maxPressurePaGauge),
  limit: ({ vessel }, _, proof) =>
    vessel.rating === undefined
      ? missing('TS of the vessel')
      : carriedPressure(vessel, vessel.rating.maxTemperatureK, proof),
  say: ({ demand, limit, parts }) =>
    `PS of ${parts.vessel.name} is ${demand}; shell and end, recomputed at TS, carry ${limit}.`,
  source: [published('en-13445-3:2021 §6, §7'), published('EN 1595'), published('2014/68/EU annex I 3.3')],
});
