import type { PartChanges } from '../parts.js';
import type { CasesOf } from '../rule-case.js';

const sealArea = (Math.PI / 4) * 0.11 ** 2;
const at = (pressureMaxPaGauge: number) => ({ conditions: { pressureMaxPaGauge } });

/** A disc that opens at this pressure at the latest. */
const opensAt = (paGauge: number) => ({ parts: { relief: { burstPressurePaGauge: paGauge, tolerance: 0 } } });
const merged = (one: { readonly parts: PartChanges }, more: PartChanges) => ({
  parts: { ...one.parts, ...more },
});

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
    edge: {
      ...opensAt(6e6),
      moves: 'limit',
      to: (v) => merged(opensAt(6e6), { closure: { ratedForceN: v } }),
    },
    cases: [
      { name: 'carried', ...opensAt(6e6), is: 'met' },
      { name: 'too much, however low the process stays', ...opensAt(2e7), ...at(1e5), is: 'not met' },
    ],
  },
  'closure.bolt-load': {
    edge: { ...opensAt(6e6), moves: 'demand', to: (v) => opensAt(v / sealArea) },
    cases: [
      { name: 'ring', ...opensAt(6e6), is: 'met' },
      {
        name: 'flat gasket of assumed width',
        ...merged(opensAt(6e6), { seal: { kind: 'flat gasket', gasketFactor: 2, seatingStressPa: 15e6 } }),
        is: 'met with caution',
        says: /5 mm/,
      },
      {
        name: 'flat gasket asks for more than its bolts give',
        ...merged(opensAt(1.6e7), { seal: { kind: 'flat gasket', gasketFactor: 2, seatingStressPa: 15e6 } }),
        is: 'not met',
      },
      { name: 'no bolts', ...merged(opensAt(6e6), { closure: { bolts: null } }), is: 'silent' },
    ],
  },
  'closure.tightening': {
    cases: [
      { name: 'torque', ...opensAt(6e6), is: 'met', says: /N·m each.* MPa of .* MPa/ },
      { name: 'beyond the bolts', ...opensAt(8e7), is: 'met with caution' },
      { name: 'no bolts', ...merged(opensAt(6e6), { closure: { bolts: null } }), is: 'silent' },
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
        name: 'elastomer under a gas of which nothing is known',
        parts: { seal: { material: 'FKM', standsDecompression: false } },
        conditions: { gases: ['argon'], pressureMaxPaGauge: 6e6 },
        is: 'not met',
        says: /argon/,
      },
      {
        name: 'no gas',
        parts: { seal: { material: 'FKM', standsDecompression: false } },
        conditions: { pressureMaxPaGauge: 6e6 },
        is: 'silent',
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
