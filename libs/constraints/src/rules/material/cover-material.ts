import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

/** Covers that go with a vessel: of its material, or of a metal-free kind on a glass or lined vessel. */
const goesWith = (
  vessel: { construction: string; material: string },
  cover: { construction: string; material: string },
): boolean =>
  vessel.construction === 'metal'
    ? cover.construction === 'metal' && cover.material === vessel.material
    : cover.construction !== 'metal' || vessel.construction === 'glass';

export const coverMaterial = judgement({
  id: 'material.cover',
  title: 'Cover goes with the material of the vessel',
  group: 'material',
  kind: 'hard',
  of: { vessel: ['construction', 'material'], cover: ['construction', 'material'] },
  conditions: [],
  judge: ({ vessel, cover }) =>
    goesWith(vessel, cover)
      ? met
      : notMet(`${cover.name} (${cover.material}) does not go with ${vessel.name} (${vessel.material}).`),
  met: 'Cover and vessel go together.',
  source: [commonPractice('one wetted material through vessel and cover')],
});
