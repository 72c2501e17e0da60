import type { CasesOf } from '../rule-case.js';
import { glass } from '../parts.js';

export const wishCases: CasesOf = {
  'wish.bottom-outlet': {
    cases: [
      { name: 'there', parts: { bottomValve: {} }, conditions: { bottomOutlet: true }, is: 'met' },
      { name: 'missing', conditions: { bottomOutlet: true }, is: 'not met' },
      {
        name: 'a ball valve under a thick batch',
        parts: { bottomValve: { kind: 'ball valve' } },
        conditions: { bottomOutlet: true, viscosityMaxPaS: 1.01 },
        is: 'not met',
      },
      {
        name: 'a ball valve under a thin one',
        parts: { bottomValve: { kind: 'ball valve' } },
        conditions: { bottomOutlet: true, viscosityMaxPaS: 1 },
        is: 'met',
      },
      { name: 'not asked', is: 'silent' },
    ],
  },
  'wish.construction': {
    cases: [
      { name: 'metal', conditions: { construction: 'metal' }, is: 'met' },
      { name: 'glass', conditions: { construction: 'glass' }, is: 'not met' },
      { name: 'not asked', is: 'silent' },
    ],
  },
  'wish.family': {
    cases: [
      { name: 'asked for', conditions: { families: ['brook'] }, is: 'met' },
      { name: 'another', conditions: { families: ['Tarn'] }, is: 'not met' },
      { name: 'not asked', is: 'silent' },
    ],
  },
  'wish.impeller': {
    cases: [
      { name: 'of the kind', conditions: { impeller: 'turbine' }, is: 'met' },
      { name: 'another', conditions: { impeller: 'anchor' }, is: 'not met' },
      { name: 'unknown', conditions: { impeller: 'whisk' }, is: 'not decidable' },
      { name: 'not asked', is: 'silent' },
    ],
  },
  'wish.material': {
    cases: [
      { name: 'by another name', conditions: { material: '316L' }, is: 'met' },
      { name: 'another', conditions: { material: 'titanium' }, is: 'not met' },
      { name: 'not asked', is: 'silent' },
    ],
  },
  'wish.view-inside': {
    cases: [
      { name: 'through glass', parts: { vessel: glass }, conditions: { seeInside: true }, is: 'met' },
      {
        name: 'through a sight glass',
        parts: { sightGlass: {} },
        conditions: { seeInside: true },
        is: 'met',
      },
      { name: 'nothing to see through', conditions: { seeInside: true }, is: 'not met' },
      { name: 'not asked', is: 'silent' },
    ],
  },
};
