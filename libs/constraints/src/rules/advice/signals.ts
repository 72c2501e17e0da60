import { caution, type Judgement } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

/** Temperature of batch and heating, speed and torque. */
const ofEverySet = 4;

export const controlSignals = judgement({
  id: 'supply.signals',
  title: 'Controller has a channel for every signal',
  group: 'supply',
  kind: 'advice',
  unit: '1',
  of: {
    pressureGauge: ['transmitter'],
    processProbe: ['kind'],
    gasSupply: ['recordsUptake'],
    control: ['channels'],
  },
  conditions: ['vesselsAtOnce'],
  judge: ({ pressureGauge, processProbe, gasSupply, control }, { vesselsAtOnce }): Judgement => {
    const ofSet = ofEverySet + (pressureGauge.transmitter ? 1 : 0) + (processProbe === null ? 0 : 1);
    const demand = ofSet * Math.max(1, vesselsAtOnce) + (gasSupply?.recordsUptake === true ? 1 : 0);
    const figures = { demand, limit: control.channels };
    return demand <= control.channels
      ? { status: 'met', ...figures }
      : {
          ...caution(
            `About ${String(demand)} signals (temperatures, speed, torque, pressure, probe, gas) want a channel; ${control.name} has ${String(control.channels)}: say which are to be recorded.`,
          ),
          ...figures,
        };
  },
  met: 'Every signal finds a channel.',
  source: [commonPractice('signals of a set: two temperatures, speed, torque, pressure, probe')],
});
