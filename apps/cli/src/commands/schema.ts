import { documentSchemas, isDocumentName, jsonSchemaOf, succeed } from '@flangewise/model';
import type { Command } from '../command.js';
import { exitCodes } from '../exit-code.js';
import { refuse } from '../trouble.js';

const names = Object.keys(documentSchemas).join(', ');

export const schemaCommand: Command = {
  usage: 'schema <name>',
  summary: 'JSON Schema of a document',
  examples: ['flangewise schema inquiry'],
  details: `Names: ${names}.`,
  run: ({ operands }) => {
    const [name = ''] = operands;
    if (!isDocumentName(name)) {
      return Promise.resolve(
        refuse({
          code: 'USAGE',
          path: 'schema',
          given: name,
          message: `there is no document of this name; there are ${names}`,
        }),
      );
    }
    const document = jsonSchemaOf(name);
    return Promise.resolve(
      succeed({
        exit: exitCodes.done,
        told: { document, words: () => JSON.stringify(document, null, 2) },
      }),
    );
  },
};
