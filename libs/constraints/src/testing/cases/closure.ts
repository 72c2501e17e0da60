import type { CasesOf } from '../rule-case.js';

const sealArea = (Math.PI / 4) * 0.11 ** 2;
const at = (pressureMaxPaGauge: number) => ({ conditions: { pressureMaxPaGauge } });

export const closureCases: CasesOf = {
  'closure.bore': {
    cases: [
      { name: 'same bore', is: 'met' },
      { name: 'other bore', parts: { closure: { bore: 130 } }, is: 'not met' },
    ],
  },
  'closure.cover-bore': {
    cases: [
      { name: 'same bore', is: 'met' },
      { name: 'other bore', parts: { cover: { bore: 130 } }, is: 'not met' },
    ],
  },
  'closure.seal-bore': {
    cases: [
      { name: 'same bore', is: 'met' },
      { name: 'other bore', parts: { seal: { bore: 130 } }, is: 'not met' },
    ],
  },
  'closure.end-force': {
    edge: { ...at(6e6), moves: 'limit', to: (v) => ({ parts: { closure: { ratedForceN: v } } }) },
    cases: [
      { name: 'carried', ...at(6e6), is: 'met' },
      { name: 'too much', ...at(2e7), is: 'not met' },
      { name: 'no pressure said', is: 'not decidable' },
    ],
  },
  'closure.bolt-load': {
    edge: { ...at(6e6), moves: 'demand', to: (v) => at(v / sealArea) },
    cases: [
      { name: 'ring', ...at(6e6), is: 'met' },
      {
        name: 'flat gasket of assumed width',
        ...at(6e6),
        parts: { seal: { kind: 'flat gasket', gasketFactor: 2, seatingStressPa: 15e6 } },
        is: 'met with caution',
        says: /5 mm/,
      },
      {
        name: 'flat gasket asks for more than its bolts give',
        ...at(1.6e7),
        parts: { seal: { kind: 'flat gasket', gasketFactor: 2, seatingStressPa: 15e6 } },
        is: 'not met',
      },
      { name: 'no bolts', ...at(6e6), parts: { closure: { bolts: null } }, is: 'silent' },
    ],
  },
  'closure.tightening': {
    cases: [
      { name: 'torque', ...at(6e6), is: 'met', says: /N·m/ },
      { name: 'beyond the bolts', ...at(8e7), is: 'met with caution' },
      { name: 'no bolts', ...at(6e6), parts: { closure: { bolts: null } }, is: 'silent' },
    ],
  },
  'closure.interlock': {
    cases: [
      { name: 'bolted needs none', is: 'silent' },
      { name: 'clamp with interlock', parts: { closure: { kind: 'clamp', interlock: true } }, is: 'met' },
      { name: 'clamp without', parts: { closure: { kind: 'clamp' } }, is: 'not met' },
    ],
  },
  'closure.opening-time': {
    edge: {
      conditions: { openingsPerDay: 4 },
      moves: 'demand',
      to: (v) => ({ parts: { closure: { openingTimeS: v / 8 } } }),
    },
    cases: [
      { name: 'rarely opened', conditions: { openingsPerDay: 1 }, is: 'silent' },
      { name: 'quick enough', conditions: { openingsPerDay: 1.8 }, is: 'silent' },
      {
        name: 'twice a day by segments',
        parts: { closure: { openingTimeS: 20 } },
        conditions: { openingsPerDay: 2 },
        is: 'met',
      },
      { name: 'bolts four times a day', conditions: { openingsPerDay: 4 }, is: 'not met' },
    ],
  },
  'closure.rapid-decompression': {
    cases: [
      {
        name: 'no elastomer',
        conditions: { gases: ['hydrogen'], pressureMaxPaGauge: 6e6 },
        is: 'met',
      },
      {
        name: 'elastomer of a grade for it',
        parts: { seal: { material: 'FKM', standsDecompression: true } },
        conditions: { gases: ['hydrogen'], pressureMaxPaGauge: 6e6 },
        is: 'met with caution',
      },
      {
        name: 'elastomer just above 20 bar',
        parts: { seal: { material: 'FKM', standsDecompression: false } },
        conditions: { gases: ['hydrogen'], pressureMaxPaGauge: 2.000001e6 },
        is: 'not met',
      },
      {
        name: 'elastomer at 20 bar',
        parts: { seal: { material: 'FKM', standsDecompression: false } },
        conditions: { gases: ['hydrogen'], pressureMaxPaGauge: 2e6 },
        is: 'silent',
      },
    ],
  },
  'closure.hot-contents': {
    cases: [
      {
        name: 'below boiling',
        parts: { closure: { kind: 'segment' } },
        conditions: { temperatureMaxK: 337, boilingPointK: 337.8 },
        is: 'met',
      },
      {
        name: 'above boiling',
        parts: { closure: { kind: 'segment' } },
        conditions: { temperatureMaxK: 338, boilingPointK: 337.8 },
        is: 'met with caution',
        says: /interlock/,
      },
      { name: 'bolted', conditions: { temperatureMaxK: 400 }, is: 'silent' },
    ],
  },
};
