import { type DocumentName, jsonSchemaOf } from '@flangewise/model';
import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';

/** A validator that shares nothing with the schemas' own library. */
const ajv = new Ajv2020({ allErrors: true, strict: false, validateFormats: false });

const validators = new Map<DocumentName, ValidateFunction>();

const validatorOf = (name: DocumentName): ValidateFunction => {
  const known = validators.get(name) ?? ajv.compile(jsonSchemaOf(name));
  validators.set(name, known);
  return known;
};

/** What keeps a document from fitting the JSON Schema of this name; empty where it fits. */
export const schemaFaults = (name: DocumentName, document: unknown): readonly string[] => {
  const validate = validatorOf(name);
  return validate(document)
    ? []
    : (validate.errors ?? []).map(
        ({ instancePath, message }) => `${instancePath}: ${message ?? 'does not fit'}`,
      );
};
