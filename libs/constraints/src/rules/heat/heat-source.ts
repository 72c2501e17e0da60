import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

/** Above this the batch is not reached by a warm room [K]. */
const warmRoomK = 313.15;

export const heatSource = judgement({
  id: 'heat.source',
  title: 'Something heats the vessel',
  group: 'heat',
  kind: 'hard',
  // Only whether mantle and circulator are there matters, not which.
  of: { vessel: ['jacket'], heater: [], circulator: [] },
  conditions: ['temperatureMaxK'],
  judge: ({ vessel, heater, circulator }, { temperatureMaxK }) => {
    if (vessel.jacket !== null && heater !== null)
      return notMet(`${vessel.name} has a jacket; ${heater.name} would not reach its wall.`);
    if (vessel.jacket === null && circulator !== null)
      return notMet(`${vessel.name} has no jacket for ${circulator.name}.`);
    if (vessel.jacket !== null && circulator === null)
      return notMet(`${vessel.name} has a jacket, and no circulator is chosen for it.`);
    if (temperatureMaxK === undefined || temperatureMaxK <= warmRoomK) return undefined;
    return heater === null && circulator === null
      ? notMet('The batch is heated, and neither mantle nor circulator is chosen.')
      : met;
  },
  met: 'Mantle or jacket heats the vessel.',
  source: [
    commonPractice(
      'one metal vessel: mantle and coil; several, glass, or even control: jackets on one circulator',
    ),
  ],
});
