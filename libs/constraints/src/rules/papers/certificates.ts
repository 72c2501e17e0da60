import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { published } from '../../source.js';

export const certificatesWish = judgement({
  id: 'papers.certificates',
  title: 'Material certificates are included',
  group: 'papers',
  kind: 'hard',
  of: { certificates: ['contains'] },
  conditions: ['materialCertificates'],
  judge: ({ certificates }, { materialCertificates }) => {
    if (materialCertificates !== true) return undefined;
    return certificates?.contains.some((c) => c.includes('EN 10204')) === true
      ? met
      : notMet('Material certificates are asked for, and none are chosen (EN 10204, type 3.1).');
  },
  met: 'Material certificates EN 10204 3.1 are included.',
  source: [published('EN 10204:2004 §4.1')],
});
