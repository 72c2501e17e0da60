import { materialGrade } from '@flangewise/engineering';
import { met, notMet } from '../../figure.js';
import { partRule } from '../../rule.js';
import { setSlots } from '@flangewise/model';
import { commonPractice } from '../../source.js';

/** A material that the tables class as a metal; one they do not know is taken for one, the safe side. */
const isMetal = (material: string): boolean => {
  const grade = materialGrade(material);
  return grade.ok ? grade.value.families.includes('metal') : !minerals.has(material);
};

/** Wetted minerals that the tables of materials do not hold. */
const minerals: ReadonlySet<string> = new Set(['sapphire', 'silicon carbide', 'ceramic']);

export const noMetal = partRule({
  id: 'material.no-metal',
  title: 'No metal touches the product',
  group: 'material',
  kind: 'hard',
  each: setSlots,
  reads: ['wetted'],
  beside: {},
  conditions: ['noMetalContact'],
  judge: (part, { noMetalContact }) => {
    if (noMetalContact !== true) return undefined;
    const metals = part.wetted.filter(isMetal);
    return metals.length === 0
      ? met
      : notMet(
          `${part.name} touches the product with ${metals.join(' and ')}; no metal may (tantalum is one too).`,
        );
  },
  met: 'Vessel, stirrer, coupling, ports, valves, probes and disc: no metal touches the product.',
  source: [
    commonPractice(
      'the whole wetted path counts: vessel, stirrer, coupling, ports, valves, probes, disc, dip tube',
    ),
  ],
});
