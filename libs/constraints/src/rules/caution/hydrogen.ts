import { caution } from '../../figure.js';
import { isNamed } from '../../media-hazards.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const hydrogenService = judgement({
  id: 'caution.hydrogen-service',
  title: 'Hydrogen service',
  group: 'material',
  kind: 'caution',
  of: { relief: ['material'], pressureGauge: ['transmitter'] },
  conditions: ['media'],
  judge: ({ relief, pressureGauge }, { media }) =>
    media.some((m) => isNamed(m, 'hydrogen'))
      ? caution(
          `Hydrogen: springs, bellows, stems and membranes of hardened or martensitic steel crack; ask for austenitic or nickel parts in valves, regulator, ${relief.name} and ${pressureGauge.name}. Leak-test with helium or hydrogen before each campaign.`,
        )
      : undefined,
  met: 'No hydrogen.',
  source: [commonPractice('hydrogen embrittlement of hard steels: springs, valves, discs')],
});
