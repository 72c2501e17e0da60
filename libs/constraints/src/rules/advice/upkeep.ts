import type { Judgement } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const upkeep = judgement({
  id: 'papers.upkeep',
  title: 'Spares, inspection and shipping',
  group: 'papers',
  kind: 'advice',
  of: { seal: ['kind'], relief: ['material'], vessel: ['construction'] },
  conditions: [],
  judge: ({ seal, relief, vessel }): Judgement => {
    const spares =
      vessel.construction === 'glass'
        ? `${seal.name}, ${relief.name} and a spare vessel`
        : `${seal.name} and ${relief.name}`;
    const shipped =
      vessel.construction === 'glass' ? 'glass apart from its frame' : 'dry, closed and under nitrogen';
    return {
      status: 'met',
      text: `For commissioning keep a second ${spares}. Discs are changed by their maker's interval and after every near burst, seals when they show marks, the vessel is inspected inside by the interval of local law. Shipped ${shipped}.`,
    };
  },
  met: 'Nothing to keep up.',
  source: [commonPractice('commissioning spares, inspection intervals by local law, shipping state')],
});
