import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation } from '../calculation.js';
import { pedCategories, type PedCategory } from '../ped/annex-ii-vessels.js';
import { commonPractice, fromMemory, published } from '../source-reference.js';

/** What a customer may wish besides what the law asks for, with the papers that follow. */
const wishedPapers = {
  'material certificates': ['Inspection certificate 3.1 for every pressure part, EN 10204'],
  'pressure test': ['Record of the pressure test with medium, pressure and holding time'],
  'factory acceptance': ['Plan and record of the factory acceptance test'],
  qualification: ['Protocols of installation and operational qualification'],
  calibration: ['Calibration certificates of pressure and temperature instruments'],
  'surface finish': ['Record of the measured surface roughness'],
} as const;

export const documentWishes = Object.keys(wishedPapers) as (keyof typeof wishedPapers)[];

const paper = z.strictObject({
  document: z.string().meta({ description: 'Paper to be delivered' }),
  demandedBy: z.string().meta({ description: 'Law or wish that asks for it' }),
});

type Paper = z.output<typeof paper>;

const byLaw = (category: PedCategory): readonly Paper[] => {
  const of = (demandedBy: string, documents: readonly string[]): readonly Paper[] =>
    documents.map((document) => ({ document, demandedBy }));
  const always = of('2014/68/EU annex I 3.4', ['Instructions for use, in the language of the country']);
  if (category === 'out of scope') return [];
  if (category === 'Art4(3)') {
    return of('2014/68/EU art. 4(3)', ['Instructions for use, in the language of the country']);
  }
  const marked = of('2014/68/EU art. 6, art. 17', [
    'EU declaration of conformity',
    'Technical documentation with the analysis of the risks',
  ]);
  if (category === 'I') return [...always, ...marked];
  const joined = of('2014/68/EU annex I 3.1.2, 4.3', [
    'Approval of joining procedures and personnel',
    'Specific inspection certificates of the main pressure-bearing materials',
    'Certificate of the notified body for the module chosen',
  ]);
  if (category === 'II') return [...always, ...marked, ...joined];
  return [
    ...always,
    ...marked,
    ...joined,
    ...of('2014/68/EU annex I 3.1.3', ['Approval of personnel of non-destructive tests']),
  ];
};

/**
 * Papers that go with a vessel or an assembly: what its category asks for, and what the customer wishes.
 *
 * @param category from ped.vesselAssessment or ped.assembly
 * @param wishes   what the customer wants besides
 * @param hazardousArea the system stands in or holds a zone
 * @returns documents, each with the law or wish that asks for it; statement
 * @range pressure equipment; papers of machinery and electrical law by conformity.directives
 * @error CALC_INVALID_INPUT for an unknown wish
 * @source 2014/68/EU art. 4(3), 6, 17, annex I 3.1.2, 3.1.3, 3.4, 4.3; 2014/34/EU art. 13; EN 10204
 */
export const documents = calculation({
  id: 'conformity.documents',
  title: 'Documents by category and wishes',
  inputs: z.strictObject({
    category: z.enum(pedCategories).meta({ description: 'Category of the whole' }),
    wishes: z
      .array(z.enum(documentWishes))
      .default([])
      .meta({ description: 'What the customer wants besides' }),
    hazardousArea: z.boolean().default(false).meta({ description: 'The system stands in or holds a zone' }),
  }),
  outputs: z.strictObject({
    documents: z.array(paper),
    statement: z.string().meta({ description: 'What the list does not cover' }),
  }),
  formula: String.raw`\text{documents} = \text{law}(\text{category}) \cup \text{wishes}`,
  range: 'pressure equipment and explosion protection; each paper once',
  source: [
    published('2014/68/EU art. 4(3), annex I 3.1.2, 3.1.3, 3.4'),
    fromMemory('2014/68/EU art. 6, art. 17, annex I 4.3'),
    fromMemory('2014/34/EU art. 13'),
    commonPractice('offer-papers factory acceptance, qualification, calibration'),
  ],
  compute: ({ category, wishes, hazardousArea }, log) => {
    const found = [
      ...byLaw(category),
      ...(hazardousArea
        ? [
            {
              document: 'EU declaration of conformity for explosion protection, with the marking',
              demandedBy: '2014/34/EU art. 13',
            },
          ]
        : []),
      ...[...new Set(wishes)].flatMap((wish) =>
        wishedPapers[wish].map((document) => ({ document, demandedBy: `wish: ${wish}` })),
      ),
    ];
    log?.({
      symbol: 'n',
      formula: 'papers by law and by wish',
      substituted: `category ${category}, ${String(wishes.length)} wishes`,
      value: found.length,
      unit: '1',
    });
    return succeed({
      documents: found,
      statement: `${String(found.length)} documents for category ${category}. To be checked against the text in force.`,
    });
  },
});
