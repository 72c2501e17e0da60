import { materialGrade } from '@flangewise/engineering';
import { notDecidable } from '../../figure.js';
import { isNamed } from '../../media-hazards.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

const isCarbonSteel = (material: string): boolean => {
  const grade = materialGrade(material);
  return grade.ok && grade.value.families.includes('carbon steel');
};

/** Hydrogen goes through a polymer lining; the curves for steels behind it are not on file in a form to decide by. */
export const carrierInHydrogen = judgement({
  id: 'material.carrier-in-hydrogen',
  title: 'Steel behind a lining stands hydrogen',
  group: 'material',
  kind: 'hard',
  of: { vessel: ['carrier'] },
  conditions: ['media'],
  judge: ({ vessel }, { media }) => {
    if (vessel.carrier === null || !isCarbonSteel(vessel.carrier)) return undefined;
    return media.some((m) => isNamed(m, 'hydrogen'))
      ? notDecidable(
          `${vessel.name}: hydrogen goes through the lining; whether ${vessel.carrier} stands it at pressure and temperature is not decided here.`,
          `attack of ${vessel.carrier} by hydrogen (API RP 941, current curves)`,
        )
      : undefined;
  },
  met: 'No carbon steel behind a lining under hydrogen.',
  source: [commonPractice('hydrogen permeates polymer linings; hydrogen attack of carbon steel')],
});
