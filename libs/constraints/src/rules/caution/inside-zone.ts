import { caution } from '../../figure.js';
import { isFlammable } from '../../media-hazards.js';
import { judgement } from '../../rule.js';
import { commonPractice, fromMemory } from '../../source.js';

export const insideZone = judgement({
  id: 'hazardous-area.inside',
  title: 'The inside of the vessel can be a zone of its own',
  group: 'hazardous area',
  kind: 'caution',
  of: { temperatureProbe: ['kind'], coupling: ['kind'], processProbe: ['kind'] },
  conditions: ['media', 'inerting'],
  judge: ({ temperatureProbe, coupling, processProbe }, { media, inerting }) => {
    const flammable = media.find((m) => isFlammable(m) && m.role !== 'inert gas');
    if (flammable === undefined) return undefined;
    const inside = [
      temperatureProbe.name,
      coupling.name,
      ...(processProbe === null ? [] : [processProbe.name]),
    ];
    const kept =
      inerting === true
        ? 'Inerting keeps it away as long as the oxygen is watched'
        : 'Inert and watch the oxygen, or count it as zone 0';
    return caution(
      `${flammable.name} with air makes an explosive atmosphere inside the vessel whenever it is filled, opened or evacuated. ${kept}; ${inside.join(' and ')} reach into it and need equipment of category 1G for zone 0, whatever the zone outside.`,
    );
  },
  met: 'Nothing in the vessel burns.',
  source: [
    fromMemory('1999/92/EC annex I'),
    commonPractice('the inside of a vessel can be a zone of its own'),
  ],
});
