import { materialGrade } from '@flangewise/engineering';
import { caution, type Judgement } from '../../figure.js';
import { judgement } from '../../rule.js';
import { fromMemory } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';

/** Regulation (EU) 2021/821, annex I, 2B350.a, from memory: reaction vessels above 100 L and below 20 000 L. */
const fromL = 100;
/**
 * What the entry names, from memory: alloys with more than 25 % nickel and 20 % chromium, nickel and alloys with
 * more than 40 % nickel, fluoropolymers, glass, tantalum, titanium, zirconium, niobium. Stainless steel and graphite
 * are not among them; every nickel alloy on file has more than 40 % nickel, and niobium is on no file.
 */
const listed = ['nickel alloy', 'titanium', 'zirconium', 'tantalum', 'glass', 'fluoropolymer'];

const isListed = (material: string): boolean => {
  const grade = materialGrade(material);
  return !grade.ok || grade.value.families.some((family) => listed.includes(family));
};

export const exportLicence = judgement({
  id: 'papers.export-licence',
  title: 'Export licence',
  group: 'papers',
  kind: 'advice',
  of: { vessel: ['innerVolumeL', 'material'] },
  conditions: [],
  judge: ({ vessel }): Judgement | undefined => {
    if (vessel.innerVolumeL <= fromL) return undefined;
    const shown = `${vessel.name} holds ${shownQuantity(vessel.innerVolumeL / 1000, 'm3')}`;
    const entry =
      'Regulation (EU) 2021/821, annex I, 2B350.a (from memory, to be checked against the text in force)';
    return isListed(vessel.material)
      ? caution(
          `${shown} and touches the product with ${vessel.material}: leaving the Union it can need an export licence, ${entry}. Ask for the end use and the end user before anything is promised.`,
        )
      : {
          status: 'met',
          text: `${shown}: reactors above 100 L can need an export licence where they are of corrosion-resistant materials, ${entry}; ask for the end use.`,
        };
  },
  met: 'The vessel is too small to need an export licence.',
  source: [fromMemory('Regulation (EU) 2021/821 annex I 2B350')],
});
