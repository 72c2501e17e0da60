import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const limiterNeeded = judgement({
  id: 'protection.temperature-limiter',
  title: 'Heat is cut by a limiter of its own',
  group: 'protection',
  kind: 'hard',
  of: { heater: ['powerW'], circulator: ['heatingPowerW'], limiter: ['limitRangeK'] },
  conditions: ['temperatureMaxK'],
  judge: ({ heater, circulator, limiter }, { temperatureMaxK }) => {
    const source = heater ?? circulator;
    if (source === null) return undefined;
    if (limiter === null)
      return notMet(`${source.name} heats the vessel, and nothing independent of the controller cuts it.`);
    if (temperatureMaxK === undefined) return met;
    const { lowest, highest } = limiter.limitRangeK;
    return temperatureMaxK < lowest || temperatureMaxK > highest
      ? notMet(`${limiter.name} cannot be set to the highest temperature of the process.`)
      : met;
  },
  met: 'A temperature limiter, independent of the controller, cuts the heat.',
  source: [commonPractice('independent temperature limiter on every heated vessel')],
});
