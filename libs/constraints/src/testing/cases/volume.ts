import type { CasesOf } from '../rule-case.js';

const filled = { conditions: { batchVolumeM3: 0.8e-3, hotVolumeM3: 0.9e-3 } };

export const volumeCases: CasesOf = {
  'volume.hot-fill': {
    edge: { ...filled, moves: 'demand', to: (v) => ({ conditions: { hotVolumeM3: v } }) },
    cases: [
      { name: 'hot batch fits', ...filled, is: 'met' },
      {
        name: 'hot batch too large',
        conditions: { batchVolumeM3: 0.8e-3, hotVolumeM3: 1.1e-3 },
        is: 'not met',
      },
      {
        name: 'foaming leaves less room',
        conditions: { batchVolumeM3: 0.7e-3, hotVolumeM3: 0.8e-3, fillLimit: 0.6 },
        is: 'not met',
      },
      {
        name: 'expansion not on file',
        conditions: { batchVolumeM3: 0.8e-3 },
        is: 'met with caution',
        says: /not on file/,
      },
      { name: 'no batch said', is: 'not decidable' },
    ],
  },
  'volume.liquid-full': {
    edge: { ...filled, moves: 'demand', to: (v) => ({ conditions: { hotVolumeM3: v } }) },
    cases: [
      { name: 'room above the liquid', ...filled, is: 'met' },
      { name: 'full', conditions: { batchVolumeM3: 1e-3, hotVolumeM3: 1.2e-3 }, is: 'not met' },
      {
        name: 'heated, expansion not on file',
        conditions: { batchVolumeM3: 0.8e-3, temperatureMaxK: 423.15 },
        is: 'not decidable',
      },
      {
        name: 'never warmer than filled',
        conditions: { batchVolumeM3: 0.8e-3, temperatureMaxK: 290 },
        is: 'met',
      },
      { name: 'no batch', is: 'silent' },
    ],
  },
  'volume.smallest-batch': {
    edge: {
      conditions: { batchVolumeM3: 1e-3 },
      moves: 'limit',
      to: (v) => ({ conditions: { batchVolumeM3: v } }),
    },
    cases: [
      { name: 'large enough', conditions: { batchVolumeM3: 0.5e-3 }, is: 'met' },
      { name: 'too small', conditions: { batchVolumeM3: 0.2e-3 }, is: 'not met' },
      { name: 'no batch said', is: 'not decidable' },
    ],
  },
  'volume.vessel-size': {
    cases: [
      { name: 'asked size', conditions: { vesselVolumeM3: 1.2e-3 }, is: 'met' },
      { name: 'half as much again', conditions: { vesselVolumeM3: 0.8e-3 }, is: 'met' },
      { name: 'more than half as much again', conditions: { vesselVolumeM3: 0.799e-3 }, is: 'not met' },
      { name: 'smaller than asked', conditions: { vesselVolumeM3: 1.3e-3 }, is: 'not met' },
      { name: 'no size asked', is: 'silent' },
    ],
  },
};
