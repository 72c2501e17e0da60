import type { ConditionMedium } from '../../conditions.js';
import type { CasesOf } from '../rule-case.js';
import { glass, lined } from '../parts.js';

const medium = (name: string, role: ConditionMedium['role'], more: Partial<ConditionMedium> = {}) => ({
  name,
  role,
  isKnown: true,
  ...more,
});
const hydrogen = medium('hydrogen', 'gas', { cas: '1333-74-0' });
const chlorine = medium('chlorine', 'gas', { cas: '7782-50-5', dry: true });
const newSubstance = medium('a new substance', 'reactant', { isKnown: false });
const caustic = medium('sodium hydroxide', 'solvent', { massFraction: 0.12 });

export const materialCases: CasesOf = {
  'material.corrosion': {
    cases: [
      {
        name: 'suitable',
        parts: {
          vessel: glass,
          seal: { wetted: ['PTFE'] },
          cover: { wetted: ['PTFE'] },
          stirrer: { wetted: ['PTFE'] },
          shaft: { wetted: ['PTFE'] },
          coupling: { wetted: ['PTFE'] },
          temperatureProbe: { wetted: ['PTFE'] },
          relief: { wetted: ['PTFE'] },
          pressureGauge: { wetted: ['PTFE'] },
        },
        conditions: { media: [hydrogen], temperatureMaxK: 330, pressureMaxPaGauge: 5e5 },
        is: 'met',
      },
      {
        name: 'dry chlorine on titanium burns',
        parts: { vessel: { wetted: ['titanium grade 2'] } },
        conditions: { media: [chlorine], temperatureMaxK: 300 },
        is: 'not met',
      },
      {
        name: 'hot caustic soda on glass',
        parts: { vessel: glass },
        conditions: { media: [caustic], temperatureMaxK: 453.15 },
        is: 'not met',
      },
      {
        name: 'nothing on file for the pair',
        parts: { vessel: { wetted: ['copper'] } },
        conditions: { media: [hydrogen], temperatureMaxK: 330 },
        is: 'not decidable',
      },
      {
        name: 'nothing on file for the medium is told by the medium',
        conditions: { media: [newSubstance] },
        is: 'silent',
      },
      {
        name: 'an acid corrodes as a catalyst too',
        conditions: {
          media: [medium('hydrochloric acid', 'catalyst', { massFraction: 0.2 })],
          temperatureMaxK: 330,
        },
        is: 'not met',
      },
      { name: 'no media', is: 'silent' },
    ],
  },
  'material.medium-on-file': {
    cases: [
      {
        name: 'one of two is not',
        conditions: { media: [hydrogen, newSubstance] },
        is: 'not decidable',
        says: /^a new substance: no tested verdict/,
      },
      {
        name: 'a catalyst does not corrode',
        conditions: { media: [medium('a new catalyst', 'catalyst', { isKnown: false })] },
        is: 'silent',
      },
      { name: 'all are', conditions: { media: [hydrogen] }, is: 'silent' },
    ],
  },
  'material.gas-supply': {
    cases: [
      {
        name: 'stands hydrogen',
        parts: { gasSupply: {} },
        conditions: { media: [hydrogen], supplyPressurePaGauge: 1e7 },
        is: 'met',
      },
      {
        name: 'titanium in dry chlorine',
        parts: { gasSupply: { wetted: ['titanium grade 2'] } },
        conditions: { media: [chlorine] },
        is: 'not met',
      },
      { name: 'no supply', conditions: { media: [hydrogen] }, is: 'silent' },
    ],
  },
  'material.carrier-in-hydrogen': {
    cases: [
      {
        name: 'carbon steel behind the lining',
        parts: { vessel: { ...lined, carrier: 'P265GH' } },
        conditions: { media: [hydrogen] },
        is: 'not decidable',
      },
      {
        name: 'stainless steel behind it',
        parts: { vessel: lined },
        conditions: { media: [hydrogen] },
        is: 'silent',
      },
    ],
  },
  'material.cover': {
    cases: [
      { name: 'of the vessel', is: 'met' },
      { name: 'of another metal', parts: { cover: { material: '1.4571' } }, is: 'not met' },
      { name: 'metal on a lined vessel', parts: { vessel: lined }, is: 'not met' },
      { name: 'metal on glass', parts: { vessel: glass }, is: 'met' },
    ],
  },
  'material.vessel': {
    cases: [
      { name: 'as chosen', is: 'met' },
      { name: 'another', parts: { material: { material: '1.4571' } }, is: 'not met' },
    ],
  },
  'material.no-metal': {
    cases: [
      { name: 'steel touches the product', conditions: { noMetalContact: true }, is: 'not met' },
      {
        name: 'tantalum is a metal',
        parts: { vessel: { wetted: ['tantalum'] } },
        conditions: { noMetalContact: true },
        is: 'not met',
      },
      {
        name: 'glass and PTFE',
        parts: {
          vessel: glass,
          cover: { wetted: ['PTFE'] },
          stirrer: { wetted: ['PTFE'] },
          shaft: { wetted: ['PTFE'] },
          coupling: { wetted: ['silicon carbide'] },
          temperatureProbe: { wetted: ['borosilicate glass 3.3'] },
          relief: { wetted: ['PTFE'] },
          pressureGauge: { wetted: ['PTFE'] },
        },
        conditions: { noMetalContact: true },
        is: 'met',
      },
      { name: 'not asked', is: 'silent' },
    ],
  },
  'caution.lining-permeation': {
    cases: [
      { name: 'lined', parts: { vessel: lined }, is: 'met with caution', says: /vent holes/ },
      { name: 'metal', is: 'silent' },
    ],
  },
  'caution.hydrogen-service': {
    cases: [
      { name: 'hydrogen', conditions: { media: [hydrogen] }, is: 'met with caution', says: /springs/ },
      { name: 'chlorine', conditions: { media: [chlorine] }, is: 'silent' },
    ],
  },
};
