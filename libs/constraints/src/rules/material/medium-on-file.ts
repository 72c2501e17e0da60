import { notDecidable } from '../../figure.js';
import { judgement } from '../../rule.js';
import { published } from '../../source.js';
import { mediaNotOnFile } from './corrosion.js';

export const mediumOnFile = judgement({
  id: 'material.medium-on-file',
  title: 'Every medium is on file',
  group: 'material',
  kind: 'hard',
  of: { vessel: [] },
  conditions: ['media'],
  judge: (_, { media }) => {
    const unknown = mediaNotOnFile(media);
    const names = unknown.map(({ name }) => name).join(', ');
    return unknown.length === 0
      ? undefined
      : notDecidable(
          `${names}: no tested verdict is on file for any material. Name the substance or its CAS number, or test the wetted materials in it; the other media are judged without it.`,
          ...unknown.map(({ name }) => `corrosion by ${name}`),
        );
  },
  met: 'Tested verdicts are on file for every medium.',
  source: [published('corrosion rows, each with its own source')],
});
