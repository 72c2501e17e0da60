import type { CasesOf } from '../rule-case.js';
import { parts } from '../parts.js';

const gas = { gases: ['nitrogen'], supplyPressurePaGauge: 2e7 };
const methanol = { name: 'methanol', role: 'solvent', isKnown: true, cas: '67-56-1' } as const;
const hydrogen = { name: 'hydrogen', role: 'gas', isKnown: true, cas: '1333-74-0' } as const;
const chlorine = { name: 'chlorine', role: 'gas', isKnown: true, cas: '7782-50-5' } as const;
const rating = parts.vessel?.rating;
const ps = (maxPressurePaGauge: number) =>
  rating === undefined ? {} : { rating: { ...rating, maxPressurePaGauge } };

export const reliefCases: CasesOf = {
  'relief.burst-below-ps': {
    edge: { moves: 'demand', to: (v) => ({ parts: { relief: { burstPressurePaGauge: v / 1.05 } } }) },
    cases: [
      { name: 'below PS', is: 'met' },
      { name: 'its tolerance goes above', parts: { relief: { tolerance: 0.12 } }, is: 'not met' },
    ],
  },
  'relief.burst-below-parts': {
    cases: [
      { name: 'below the rating of each', is: 'met' },
      {
        name: 'above that of a condenser of glass, however low the process stays',
        parts: { condenser: ps(1e5) },
        conditions: { pressureMaxPaGauge: 5e4 },
        is: 'not met',
        says: /condenser is rated .* opens at .* at the latest/,
      },
    ],
  },
  'relief.operating-ratio': {
    edge: {
      conditions: { pressureMaxPaGauge: 5e6 },
      moves: 'demand',
      to: (v) => ({ conditions: { pressureMaxPaGauge: v } }),
    },
    cases: [
      { name: 'kept', conditions: { pressureMaxPaGauge: 5e6 }, is: 'met' },
      { name: 'not kept', conditions: { pressureMaxPaGauge: 8e6 }, is: 'not met' },
      { name: 'no pressure said', is: 'not decidable' },
    ],
  },
  'relief.disc-window': {
    cases: [
      { name: 'open', conditions: { pressureMaxPaGauge: 5e6 }, is: 'met', says: /stamped from/ },
      {
        name: 'closed',
        conditions: { pressureMaxPaGauge: 9.5e6 },
        is: 'met with caution',
        says: /no burst pressure/,
      },
      { name: 'no pressure said', is: 'silent' },
    ],
  },
  'relief.gas-area': {
    edge: {
      parts: { gasSupply: {} },
      conditions: gas,
      moves: 'limit',
      to: (v) => ({ parts: { gasSupply: {}, relief: { areaM2: v } } }),
    },
    cases: [
      { name: 'passes', parts: { gasSupply: {} }, conditions: gas, is: 'met' },
      {
        name: 'too small',
        parts: { gasSupply: {}, relief: { areaM2: 1e-7 } },
        conditions: gas,
        is: 'not met',
      },
      {
        name: 'the larger of two regulators counts',
        parts: { gasSupply: {}, relief: { areaM2: 1e-6 } },
        conditions: { ...gas, regulatorKv: 1e-4 },
        is: 'not met',
      },
      {
        name: 'the process gas decides, not the inert one before it',
        parts: { gasSupply: {} },
        conditions: {
          ...gas,
          gases: ['a gas that nobody knows', 'hydrogen'],
          media: [{ name: 'a gas that nobody knows', role: 'inert gas', isKnown: false }, hydrogen],
        },
        is: 'met',
      },
      {
        name: 'supply below the relieving pressure',
        parts: { gasSupply: {} },
        conditions: { ...gas, supplyPressurePaGauge: 5e6 },
        is: 'met',
      },
      {
        name: 'Kv unknown',
        parts: { gasSupply: { flowCoefficientKv: null } },
        conditions: gas,
        is: 'not decidable',
      },
      { name: 'no gas', is: 'silent' },
    ],
  },
  'relief.partial-areas': {
    cases: [
      {
        name: 'gas and fire beside a reaction that is not decidable',
        parts: { gasSupply: {}, relief: { burstPressurePaGauge: 2e6 } },
        conditions: {
          ...gas,
          media: [methanol],
          batchVolumeM3: 0.8e-3,
          temperatureMaxK: 423.15,
          exothermic: true,
        },
        is: 'met',
        says: /runaway reaction is not among them/,
      },
      {
        name: 'a disc smaller than the worst',
        parts: { gasSupply: {}, relief: { areaM2: 1e-7 } },
        conditions: gas,
        is: 'met with caution',
        says: /larger disc/,
      },
      { name: 'nothing known', is: 'silent' },
    ],
  },
  'relief.vent-load': {
    cases: [
      {
        name: 'borne',
        parts: { relief: { burstPressurePaGauge: 1e6 }, ventLine: { diameterM: 0.04 } },
        conditions: { gases: ['nitrogen'] },
        is: 'met',
        says: /thrust/,
      },
      {
        name: 'by the process gas, not the inert one before it',
        parts: { relief: { burstPressurePaGauge: 1e6 }, ventLine: { diameterM: 0.04 } },
        conditions: {
          gases: ['nitrogen', 'hydrogen'],
          media: [{ name: 'nitrogen', role: 'inert gas', isKnown: true }, hydrogen],
        },
        is: 'met',
        says: /kg\/s of hydrogen/,
      },
      {
        name: 'by the gas that the tables know',
        parts: { relief: { burstPressurePaGauge: 1e6 }, ventLine: { diameterM: 0.04 } },
        conditions: { gases: ['a gas that nobody knows', 'nitrogen'] },
        is: 'met',
        says: /kg\/s of nitrogen/,
      },
      {
        name: 'above the rating of the line',
        parts: { ventLine: { ...ps(1e5) } },
        conditions: { gases: ['nitrogen'] },
        is: 'not met',
        says: /wider/,
      },
      { name: 'nothing known', is: 'silent' },
    ],
  },
  'relief.gas-limit': {
    cases: [
      { name: 'supply below PS', parts: { gasSupply: {} }, is: 'met' },
      {
        name: 'at PS',
        parts: { gasSupply: { maxOutletPressurePaGauge: 1e7 } },
        is: 'met',
      },
      {
        name: 'supply above PS',
        parts: { gasSupply: { maxOutletPressurePaGauge: 1.000001e7 } },
        is: 'not met',
      },
      {
        name: 'held by a limiter',
        parts: { gasSupply: { maxOutletPressurePaGauge: 2e7 }, gasLimit: {} },
        is: 'met',
      },
      {
        name: 'by a limiter that lets too much through',
        parts: { gasSupply: { maxOutletPressurePaGauge: 2e7 }, gasLimit: { setPressurePaGauge: 1.1e7 } },
        is: 'not met',
      },
      { name: 'no supply', is: 'silent' },
    ],
  },
  'relief.gauge-range': {
    cases: [
      { name: 'covers PS', is: 'met' },
      { name: 'ends at PS', parts: { pressureGauge: { rangePaGauge: 1e7 } }, is: 'met' },
      { name: 'ends below', parts: { pressureGauge: { rangePaGauge: 9.99e6 } }, is: 'not met' },
      { name: 'four times PS', parts: { pressureGauge: { rangePaGauge: 4e7 } }, is: 'met' },
      { name: 'too coarse', parts: { pressureGauge: { rangePaGauge: 4.01e7 } }, is: 'not met' },
    ],
  },
  'relief.runaway': {
    cases: [
      { name: 'gives heat', conditions: { exothermic: true }, is: 'not decidable', says: /calorimetric/ },
      { name: 'self-reactive', conditions: { selfReactive: true }, is: 'not decidable' },
      {
        name: 'data at hand: sized by a specialist',
        conditions: { exothermic: true, calorimetry: true },
        is: 'not decidable',
        says: /specialist/,
      },
      { name: 'no reaction', is: 'silent' },
    ],
  },
  'relief.vacuum-support': {
    cases: [
      { name: 'with support', conditions: { vacuum: true }, is: 'met' },
      {
        name: 'without',
        parts: { relief: { vacuumSupport: false } },
        conditions: { vacuum: true },
        is: 'not met',
      },
      { name: 'no vacuum', is: 'silent' },
    ],
  },
  'relief.vent-line': {
    cases: [
      { name: 'to a safe place', conditions: { media: [hydrogen] }, is: 'met' },
      { name: 'into the room', parts: { ventLine: null }, is: 'not met' },
      { name: 'narrower than the disc', parts: { ventLine: { diameterM: 0.009 } }, is: 'not met' },
      { name: 'toxic gas to the outside', conditions: { media: [chlorine] }, is: 'not met' },
      {
        name: 'toxic gas to a scrubber',
        parts: { ventLine: { kind: 'to scrubber' } },
        conditions: { media: [chlorine] },
        is: 'met',
      },
    ],
  },
};
