import { caution, met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const samplingWish = judgement({
  id: 'accessories.sampling',
  title: 'Samples can be taken',
  group: 'accessories',
  kind: 'hard',
  of: { sampling: ['kind'] },
  conditions: ['sampling'],
  judge: ({ sampling }, { sampling: asked }) =>
    asked !== true
      ? undefined
      : sampling === null
        ? notMet('Sampling is asked for, and no sampling device is chosen.')
        : met,
  met: 'A sampling device is there.',
  source: [commonPractice('wish of the client')],
});

export const dosingWish = judgement({
  id: 'accessories.dosing',
  title: 'Liquid can be dosed against pressure',
  group: 'accessories',
  kind: 'hard',
  of: { charging: ['kind'] },
  conditions: ['dosingAgainstPressure'],
  judge: ({ charging }, { dosingAgainstPressure }) => {
    if (dosingAgainstPressure !== true) return undefined;
    return charging?.kind === 'burette against pressure'
      ? met
      : notMet('Dosing against pressure is asked for, and no burette for it is chosen.');
  },
  met: 'A burette doses against pressure.',
  source: [commonPractice('wish of the client')],
});

export const condenserWish = judgement({
  id: 'accessories.condenser',
  title: 'Vapour is condensed where it is asked',
  group: 'accessories',
  kind: 'hard',
  of: { condenser: ['areaM2'] },
  conditions: ['refluxCondenser'],
  judge: ({ condenser }, { refluxCondenser }) =>
    refluxCondenser !== true
      ? undefined
      : condenser === null
        ? notMet('A reflux condenser is asked for, and none is chosen.')
        : met,
  met: 'A reflux condenser is there.',
  source: [commonPractice('wish of the client')],
});

export const basketWish = judgement({
  id: 'accessories.basket',
  title: 'Catalyst basket fits and is there where it is asked',
  group: 'accessories',
  kind: 'hard',
  of: { vessel: ['bore'], basket: ['bore'] },
  conditions: ['catalystBasket'],
  judge: ({ vessel, basket }, { catalystBasket }) => {
    if (basket === null) {
      return catalystBasket === true
        ? notMet('A catalyst basket is asked for, and none is chosen.')
        : undefined;
    }
    return basket.bore === vessel.bore
      ? met
      : notMet(`${basket.name} is made for bore ${basket.bore}; ${vessel.name} has bore ${vessel.bore}.`);
  },
  met: 'The catalyst basket fits.',
  source: [commonPractice('wish of the client')],
});

export const probeWish = judgement({
  id: 'accessories.process-probe',
  title: 'Wished process probe is there',
  group: 'accessories',
  kind: 'hard',
  of: { processProbe: ['kind'] },
  conditions: ['processProbes'],
  judge: ({ processProbe }, { processProbes }) => {
    if (processProbes === undefined || processProbes.length === 0) return undefined;
    const uncovered = processProbes.filter((kind) => kind !== processProbe?.kind);
    if (uncovered.length === 0) return met;
    if (processProbe === null || uncovered.length === processProbes.length)
      return notMet(`A probe for ${processProbes.join(', ')} is asked for.`);
    return caution(
      `${processProbe.name} covers ${processProbe.kind}; asked for besides and not covered: ${uncovered.join(', ')}. A set has one place for a probe: ask for a special.`,
    );
  },
  met: 'The wished probe is there.',
  source: [commonPractice('wish of the client')],
});
