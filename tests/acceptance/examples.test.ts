import { readdirSync } from 'node:fs';
import type { DocumentName, OfferAnswer } from '@flangewise/model';
import { beforeAll, describe, expect, it } from 'vitest';
import { schemaFaults } from '../../apps/cli/src/testing/fits-schema.js';
import { type Examples, inquiryNames, makeAnswers, makeSystems, pathOf, readExample } from './examples.js';

const again = 'run "npm run examples", look at what changed, and commit it';

const answerSchemas: Readonly<Record<string, DocumentName>> = {
  solve: 'solve-answer',
  check: 'assessment',
  narrow: 'narrow-answer',
  explain: 'explain-answer',
  offer: 'offer-answer',
};

const filesIn = (folder: string): readonly string[] =>
  readdirSync(pathOf(folder)).filter((name) => name.endsWith('.json'));

const commandOf = (name: string): string => name.split('.').at(-2) ?? '';

/** Sizes of files may differ from machine to machine: compression is a matter of its library. */
const comparable = (path: string, document: unknown): unknown =>
  path.endsWith('.offer.json') && typeof document === 'object' && document !== null && 'files' in document
    ? {
        ...document,
        files: (document as OfferAnswer).files.map(({ name, mediaType }) => ({ name, mediaType })),
      }
    : document;

describe('examples fit the JSON Schemas', () => {
  it.each(inquiryNames)('inquiry %s', (name) => {
    expect(schemaFaults('inquiry', readExample('inquiries', `${name}.json`))).toEqual([]);
  });

  it.each(filesIn('systems'))('system %s', (name) => {
    expect(schemaFaults('system', readExample('systems', name))).toEqual([]);
  });

  it.each(filesIn('answers'))('answer %s', (name) => {
    const schema = answerSchemas[commandOf(name)];
    expect(schema).toBeDefined();
    expect(schemaFaults(schema!, readExample('answers', name))).toEqual([]);
  });
});

describe('a document that does not fit', () => {
  it('is told from one that does', () => {
    expect(schemaFaults('inquiry', { title: 7, sets: [{ count: 0 }], unknown: true })).toHaveLength(3);
  });
});

describe('examples are what the commands answer today', () => {
  let systems: Examples;
  let answers: Examples;

  beforeAll(async () => {
    systems = await makeSystems();
    answers = await makeAnswers(systems);
  }, 300_000);

  it('systems', () => {
    expect([...systems.keys()].map((path) => path.replace('systems/', '')).sort()).toEqual(
      filesIn('systems'),
    );
    for (const [path, document] of systems) expect(readExample(path), again).toEqual(document);
  });

  it('answers', () => {
    expect([...answers.keys()].map((path) => path.replace('answers/', '')).sort()).toEqual(
      [...filesIn('answers')].sort(),
    );
    for (const [path, document] of answers)
      expect(comparable(path, readExample(path)), `${path}: ${again}`).toEqual(comparable(path, document));
  });
});
