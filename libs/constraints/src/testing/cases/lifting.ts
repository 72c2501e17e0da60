import type { CasesOf } from '../rule-case.js';

export const liftingCases: CasesOf = {
  'lifting.cover-capacity': {
    edge: {
      parts: { lift: { moves: 'cover' } },
      moves: 'limit',
      to: (v) => ({ parts: { lift: { moves: 'cover', capacityKg: v } } }),
    },
    cases: [
      { name: 'carried', parts: { lift: { moves: 'cover' } }, is: 'met' },
      { name: 'too heavy', parts: { lift: { moves: 'cover', capacityKg: 10 } }, is: 'not met' },
      { name: 'the vessel is lifted', is: 'silent' },
    ],
  },
  'lifting.vessel-capacity': {
    edge: {
      conditions: { batchVolumeM3: 1e-3, densityKgPerM3: 900 },
      moves: 'limit',
      to: (v) => ({ parts: { lift: { capacityKg: v } } }),
    },
    cases: [
      { name: 'carried', conditions: { batchVolumeM3: 1e-3, densityKgPerM3: 900 }, is: 'met' },
      { name: 'batch unknown', is: 'not decidable', says: /batch/i },
      {
        name: 'one after the other',
        conditions: { batchVolumeM3: 1e-3, densityKgPerM3: 900 },
        count: 6,
        is: 'met',
      },
      { name: 'too heavy', parts: { lift: { capacityKg: 5 } }, is: 'not met' },
      { name: 'the cover is lifted', parts: { lift: { moves: 'cover' } }, is: 'silent' },
    ],
  },
  'lifting.hand-mass': {
    edge: {
      parts: { lift: null, cover: { massKg: 60 } },
      moves: 'demand',
      to: (v) => ({ parts: { lift: null, vessel: { massKg: v }, cover: { massKg: 60 } } }),
    },
    cases: [
      { name: 'light', parts: { lift: null, vessel: { massKg: 5 } }, is: 'met' },
      { name: 'heavy', parts: { lift: null, vessel: { massKg: 40 }, cover: { massKg: 60 } }, is: 'not met' },
      {
        name: 'the cover with its coupling',
        parts: { lift: null, vessel: { massKg: 40 }, cover: { massKg: 8 }, coupling: { massKg: 20 } },
        is: 'not met',
      },
      { name: 'with a lift', is: 'silent' },
    ],
  },
  'lifting.headroom': {
    edge: {
      conditions: { ceilingHeightM: 3 },
      moves: 'limit',
      to: (v) => ({ conditions: { ceilingHeightM: v } }),
    },
    cases: [
      { name: 'fits', conditions: { ceilingHeightM: 2.5 }, is: 'met' },
      { name: 'too low', conditions: { ceilingHeightM: 1.9 }, is: 'not met' },
      {
        name: 'the cover rises',
        parts: { lift: { moves: 'cover', strokeM: 0.6 } },
        conditions: { ceilingHeightM: 2.5 },
        is: 'not met',
      },
      { name: 'ceiling unknown', is: 'not decidable' },
    ],
  },
  'lifting.stroke': {
    edge: { moves: 'limit', to: (v) => ({ parts: { lift: { strokeM: v } } }) },
    cases: [
      { name: 'clears the shaft', is: 'met' },
      { name: 'too short', parts: { lift: { strokeM: 0.14 } }, is: 'not met' },
      { name: 'no lift', parts: { lift: null }, is: 'silent' },
    ],
  },
  'lifting.internals': {
    cases: [
      { name: 'clears the thermowell', is: 'met' },
      { name: 'at the stroke', parts: { lift: { strokeM: 0.17 } }, is: 'met' },
      { name: 'just below', parts: { lift: { strokeM: 0.1699 } }, is: 'not met' },
      { name: 'no lift', parts: { lift: null }, is: 'silent' },
    ],
  },
  'lifting.floor': {
    edge: { moves: 'demand', to: (v) => ({ parts: { shaft: { lengthM: v - 0.03 } } }) },
    cases: [
      { name: 'room below', is: 'met' },
      { name: 'meets the floor', parts: { frame: { heightM: 0.3 } }, is: 'not met' },
      { name: 'the cover is lifted', parts: { lift: { moves: 'cover' } }, is: 'silent' },
    ],
  },
  'lifting.closure-needs-lift': {
    cases: [
      { name: 'with its lift', parts: { closure: { needsLift: true } }, is: 'met' },
      { name: 'without', parts: { closure: { needsLift: true }, lift: null }, is: 'not met' },
      { name: 'needs none', is: 'silent' },
    ],
  },
  'lifting.tilt': {
    cases: [
      { name: 'tilts', parts: { lift: { tilts: true } }, conditions: { tilt: true }, is: 'met' },
      { name: 'does not', conditions: { tilt: true }, is: 'not met' },
      { name: 'not asked', is: 'silent' },
    ],
  },
};
