import type { CasesOf } from '../rule-case.js';
import { glass } from '../parts.js';

const acid = { name: 'hydrochloric acid', role: 'solvent', isKnown: true, massFraction: 0.2 } as const;

export const paperCases: CasesOf = {
  'papers.certificates': {
    cases: [
      { name: 'included', conditions: { materialCertificates: true }, is: 'met' },
      {
        name: 'missing',
        parts: { certificates: null },
        conditions: { materialCertificates: true },
        is: 'not met',
      },
      { name: 'not asked', is: 'silent' },
    ],
  },
  'papers.qualification': {
    cases: [
      { name: 'included', conditions: { qualificationPapers: true }, is: 'met' },
      {
        name: 'missing',
        parts: { qualification: null },
        conditions: { qualificationPapers: true },
        is: 'not met',
      },
      { name: 'not asked', is: 'silent' },
    ],
  },
  'papers.machinery': {
    cases: [
      { name: 'in the Union', conditions: { country: 'Germany' }, is: 'met', says: /20 January 2027/ },
      { name: 'elsewhere', conditions: { country: 'United States' }, is: 'silent' },
    ],
  },
  'papers.explosive-atmospheres': {
    cases: [
      { name: 'in a zone', conditions: { zone: '1' }, is: 'met', says: /2014\/34\/EU/ },
      { name: 'no zone', conditions: { zone: 'none' }, is: 'silent' },
    ],
  },
  'papers.electrical': {
    cases: [
      { name: 'in the Union', is: 'met', says: /2014\/35\/EU/ },
      { name: 'in Great Britain', conditions: { country: 'United Kingdom' }, is: 'silent' },
    ],
  },
  'papers.export-licence': {
    cases: [
      { name: 'small', parts: { vessel: { innerVolumeL: 100 } }, is: 'silent' },
      { name: 'stainless steel', parts: { vessel: { innerVolumeL: 101 } }, is: 'met', says: /end use/ },
      {
        name: 'a material of the list',
        parts: { vessel: { innerVolumeL: 101, material: 'alloy C-22' } },
        is: 'met with caution',
        says: /from memory/,
      },
      {
        name: 'graphite is not of the list for vessels',
        parts: { vessel: { innerVolumeL: 101, material: 'graphite' } },
        is: 'met',
      },
    ],
  },
  'papers.upkeep': {
    cases: [
      { name: 'metal', is: 'met', says: /under nitrogen/ },
      { name: 'glass', parts: { vessel: glass }, is: 'met', says: /spare vessel/ },
    ],
  },
  'caution.fluid-group-of-vapour': {
    cases: [
      { name: 'hydrochloric acid', conditions: { media: [acid] }, is: 'met with caution' },
      {
        name: 'hydrogen chloride in solution by its number',
        conditions: { media: [{ ...acid, name: 'HCl', cas: '7647-01-0' }] },
        is: 'met with caution',
      },
      { name: 'a salt of it', conditions: { media: [{ ...acid, name: 'sodium chloride' }] }, is: 'silent' },
      { name: 'nothing', is: 'silent' },
    ],
  },
};
