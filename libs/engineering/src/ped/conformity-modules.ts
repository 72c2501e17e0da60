import { z } from 'zod';
import { pedCategories, type PedCategory } from './annex-ii-vessels.js';
import rows from './conformity-modules.json' with { type: 'json' };

const conformitySchema = z.strictObject({
  category: z.enum(pedCategories),
  /** Module or combination, one to be chosen; those of a higher category may be chosen as well. */
  modules: z.array(z.string()),
  notifiedBody: z.boolean(),
  ceMarking: z.boolean(),
});

export const notifiedBodyField = z.boolean().meta({ description: 'A notified body takes part' });

export type Conformity = z.output<typeof conformitySchema>;

const conformities = new Map(
  z
    .array(conformitySchema)
    .parse(rows)
    .map((row) => [row.category, row] as const),
);

const none: Omit<Conformity, 'category'> = { modules: [], notifiedBody: false, ceMarking: false };

/**
 * Modules to choose from for a category.
 * @source 2014/68/EU annex II point 1 and annex III (categories III and IV from memory, unverified); art. 14(3)
 */
export const conformityOf = (category: PedCategory): Conformity =>
  conformities.get(category) ?? { category, ...none };

/**
 * What the category asks of the maker besides the module.
 * @source 2014/68/EU art. 4(3), annex I 3.1.2, 3.1.3, 3.3, 3.4
 */
export const dutiesOf = (category: PedCategory): readonly string[] => {
  switch (category) {
    case 'out of scope':
      return ['Not under the directive: PS is not above 0.5 bar gauge. Other law still applies.'];
    case 'Art4(3)':
      return [
        'Design and manufacture by the sound engineering practice of a Member State',
        'Adequate instructions for use, and the identity of the maker on the equipment',
        'No CE marking under the Pressure Equipment Directive',
      ];
    case 'I':
      return ['Technical documentation, EU declaration of conformity, CE marking, instructions'];
    case 'II':
      return [
        'EU declaration of conformity, CE marking with the number of the notified body, instructions',
        'Permanent joining: procedures and personnel approved by a third party',
      ];
    case 'III':
    case 'IV':
      return [
        'EU declaration of conformity, CE marking with the number of the notified body, instructions',
        'Permanent joining: procedures and personnel approved by a third party',
        'Non-destructive tests of permanent joints by personnel approved by a third party',
      ];
  }
};
