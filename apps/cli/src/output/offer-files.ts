import type { Assessment, Offer } from '@flangewise/model';
import type { OpenSystem } from '../input/read-system.js';
import type { Release } from '../input/released.js';
import type { OutputFile } from './write-folder.js';

export interface OfferFile extends OutputFile {
  readonly mediaType: string;
}

export interface OfferInput extends OpenSystem {
  readonly assessment: Assessment;
  readonly offer: Offer;
  readonly blocking: readonly string[];
  readonly releases: readonly Release[];
}

const jsonFile = (name: string, document: unknown): OfferFile => ({
  name,
  mediaType: 'application/json',
  bytes: new TextEncoder().encode(`${JSON.stringify(document, null, 2)}\n`),
});

/** Every file that an offer can have, for people and for programs. */
export const offerFileNames: readonly string[] = [
  'offer.pdf',
  'specification.pdf',
  'bill-of-materials.csv',
  'bill-of-materials.xlsx',
  'section.svg',
  'cover.svg',
  'offer.json',
  'assessment.json',
  'system.json',
];

/** All documents of an offer. */
export const offerFiles = async (input: OfferInput): Promise<readonly OfferFile[]> => {
  const { system, document, bench, range, assessment, offer, blocking, releases } = input;
  const { drawingFactsOf, nameSources } = await import('@flangewise/constraints');
  const { inputFieldsOf } = await import('@flangewise/engineering');
  const { offerDocumentsViewOf, renderOfferDocuments } = await import('@flangewise/documents');
  const view = offerDocumentsViewOf({
    system,
    items: bench.range.items,
    offer,
    assessment: { ...nameSources(assessment), blocking: [...blocking], releasable: blocking.length === 0 },
    drawn: drawingFactsOf(system, bench.range, assessment),
    inputFields: inputFieldsOf,
    issue: {
      maker: range.catalogue.maker,
      ...(offer.date === undefined ? {} : { date: offer.date }),
      releases: releases.map(({ kind, by }) => ({ what: kind, by })),
    },
  });
  const documents = await renderOfferDocuments(view);
  return [
    ...documents,
    jsonFile('offer.json', offer),
    jsonFile('assessment.json', assessment),
    jsonFile('system.json', document),
  ];
};
