import { isEuropean } from '../../country.js';
import type { Judgement } from '../../figure.js';
import { judgement } from '../../rule.js';
import { fromMemory } from '../../source.js';

const toBeChecked = 'to be checked against the text in force';

export const machineryLaw = judgement({
  id: 'papers.machinery',
  title: 'Machinery law',
  group: 'papers',
  kind: 'advice',
  of: { drive: ['powerW'], lift: ['kind'] },
  conditions: ['country'],
  judge: ({ drive, lift }, { country }): Judgement | undefined =>
    isEuropean(country)
      ? {
          status: 'met',
          text: `${drive.name}${lift === null ? '' : ` and ${lift.name}`} make the system machinery: Directive 2006/42/EC, from 20 January 2027 Regulation (EU) 2023/1230, with risk assessment, guard or interlock of the lift, and declaration (${toBeChecked}).`,
        }
      : undefined,
  met: 'No machinery.',
  source: [fromMemory('Directive 2006/42/EC'), fromMemory('Regulation (EU) 2023/1230 art. 54')],
});

export const explosionLaw = judgement({
  id: 'papers.explosive-atmospheres',
  title: 'Law on explosive atmospheres',
  group: 'papers',
  kind: 'advice',
  of: { drive: ['electrical'] },
  conditions: ['country', 'zone'],
  judge: (_, { country, zone }): Judgement | undefined =>
    zone === undefined || zone === 'none' || !isEuropean(country)
      ? undefined
      : {
          status: 'met',
          text: `In zone ${zone} Directive 2014/34/EU holds for the equipment, electrical or not (coupling, shaft and lift need an ignition hazard assessment by EN ISO 80079-36), and the operator's explosion protection document by Directive 1999/92/EC (${toBeChecked}).`,
        },
  met: 'No hazardous area.',
  source: [fromMemory('Directive 2014/34/EU'), fromMemory('Directive 1999/92/EC')],
});

export const electricalLaw = judgement({
  id: 'papers.electrical',
  title: 'Law on electrical equipment',
  group: 'papers',
  kind: 'advice',
  of: { control: ['electrical'] },
  conditions: ['country'],
  judge: ({ control }, { country }): Judgement | undefined =>
    isEuropean(country)
      ? {
          status: 'met',
          text: `${control.name} and what it switches fall under Directive 2014/35/EU (low voltage, where it is not machinery) and Directive 2014/30/EU (electromagnetic compatibility); EN 60204-1 for the wiring (${toBeChecked}).`,
        }
      : undefined,
  met: 'No electrical equipment.',
  source: [fromMemory('Directive 2014/35/EU'), fromMemory('Directive 2014/30/EU')],
});
