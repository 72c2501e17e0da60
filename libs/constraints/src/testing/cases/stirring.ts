import type { CasesOf } from '../rule-case.js';

const still = { viscosityMinPaS: 1e-3, viscosityMaxPaS: 2e-3, densityKgPerM3: 900 } as const;
const batch = { ...still, speedMaxPerS: 15 } as const;
const thick = { ...batch, viscosityMaxPaS: 0.4 };
const stirred = { conditions: batch };
const unsaid = { conditions: still };
const driveShare = 0.85;
const solids = {
  solidsMassFraction: 0.1,
  particleSizeM: 2e-4,
  solidDensityKgPerM3: 2000,
  densityKgPerM3: 900,
  viscosityMaxPaS: 1e-3,
};
const hydrogen = { name: 'hydrogen', role: 'gas', isKnown: true, cas: '1333-74-0' } as const;

export const stirringCases: CasesOf = {
  'stirring.baffles': {
    cases: [
      { name: 'none', is: 'silent' },
      { name: 'fit', parts: { baffles: {} }, is: 'met' },
      { name: 'of another bore', parts: { baffles: { bore: 130 } }, is: 'not met' },
      {
        name: 'where an anchor sweeps',
        parts: { baffles: {}, stirrer: { impeller: 'anchor', diameterM: 0.095 } },
        is: 'not met',
      },
    ],
  },
  'stirring.bushing': {
    cases: [
      { name: 'same', is: 'met' },
      { name: 'another', parts: { coupling: { bushing: 'large' } }, is: 'not met' },
    ],
  },
  'stirring.coupling-temperature': {
    edge: {
      conditions: { temperatureMaxK: 473.15 },
      moves: 'limit',
      to: (v) => ({ parts: { coupling: { maxMagnetTemperatureK: v } } }),
    },
    cases: [
      { name: 'cool enough', conditions: { temperatureMaxK: 473.15 }, is: 'met' },
      {
        name: 'too hot',
        parts: { coupling: { maxMagnetTemperatureK: 353.15 } },
        conditions: { temperatureMaxK: 473.15 },
        is: 'not met',
      },
      {
        name: 'cooled',
        parts: { coupling: { maxMagnetTemperatureK: 353.15, cooled: true } },
        conditions: { temperatureMaxK: 473.15 },
        is: 'met',
      },
    ],
  },
  'stirring.coupling-torque': {
    edge: { ...stirred, moves: 'limit', to: (v) => ({ parts: { coupling: { ratedTorqueNm: v } } }) },
    cases: [
      { name: 'carried', ...stirred, is: 'met with caution', says: /power numbers/ },
      {
        name: 'a liquid of unknown density counts as a heavy one',
        conditions: { viscosityMaxPaS: 1e-3, speedMaxPerS: 10 },
        is: 'met with caution',
        says: /1500 kg\/m³/,
      },
      { name: 'slips', ...stirred, parts: { coupling: { ratedTorqueNm: 0.01 } }, is: 'not met' },
      { name: 'no speed said', conditions: { viscosityMaxPaS: 1e-3 }, is: 'not decidable' },
      { name: 'no viscosity said', conditions: { speedMaxPerS: 10 }, is: 'not decidable' },
    ],
  },
  'stirring.drive-torque': {
    edge: { ...stirred, moves: 'limit', to: (v) => ({ parts: { drive: { maxTorqueNm: v / driveShare } } }) },
    cases: [
      { name: 'given', ...stirred, is: 'met with caution' },
      { name: 'too weak', ...stirred, parts: { drive: { maxTorqueNm: 0.01 } }, is: 'not met' },
    ],
  },
  'stirring.drive-power': {
    edge: { ...stirred, moves: 'limit', to: (v) => ({ parts: { drive: { powerW: v / driveShare } } }) },
    cases: [
      { name: 'given', ...stirred, is: 'met with caution' },
      { name: 'too weak', ...stirred, parts: { drive: { powerW: 1 } }, is: 'not met' },
    ],
  },
  'stirring.critical-speed': {
    edge: { ...stirred, moves: 'demand', to: (v) => ({ conditions: { speedMaxPerS: v } }) },
    cases: [
      { name: 'calm', ...stirred, is: 'met' },
      { name: 'long and thin', ...stirred, parts: { shaft: { lengthM: 0.9 } }, is: 'not met' },
      { name: 'hanging magnet', ...stirred, parts: { shaft: { bearingSpanM: 0 } }, is: 'silent' },
    ],
  },
  'stirring.coupling-at-slowest': {
    edge: { ...unsaid, moves: 'limit', to: (v) => ({ parts: { coupling: { ratedTorqueNm: v } } }) },
    cases: [
      { name: 'turned', ...unsaid, is: 'met with caution', says: /as slowly as/ },
      { name: 'slips at any speed', ...unsaid, parts: { coupling: { ratedTorqueNm: 1e-6 } }, is: 'not met' },
      { name: 'a speed is wanted', ...stirred, is: 'silent' },
      { name: 'no viscosity said', is: 'silent' },
    ],
  },
  'stirring.drive-at-slowest': {
    edge: { ...unsaid, moves: 'limit', to: (v) => ({ parts: { drive: { maxTorqueNm: v / driveShare } } }) },
    cases: [
      { name: 'turned', ...unsaid, is: 'met with caution', says: /lowest speed/ },
      { name: 'too weak at any speed', ...unsaid, parts: { drive: { maxTorqueNm: 1e-6 } }, is: 'not met' },
      { name: 'a speed is wanted', ...stirred, is: 'silent' },
    ],
  },
  'stirring.lowest-speed': {
    edge: {
      conditions: { speedMinPerS: 5 },
      moves: 'limit',
      to: (v) => ({ conditions: { speedMinPerS: v } }),
    },
    cases: [
      { name: 'slow enough', conditions: { speedMinPerS: 5 }, is: 'met' },
      { name: 'not', conditions: { speedMinPerS: 0.5 }, is: 'not met' },
      { name: 'slower than the highest that is wanted', conditions: { speedMaxPerS: 0.1 }, is: 'not met' },
      { name: 'not asked', is: 'silent' },
    ],
  },
  'stirring.drive-speed': {
    edge: { ...stirred, moves: 'demand', to: (v) => ({ conditions: { speedMaxPerS: v } }) },
    cases: [
      { name: 'reached', ...stirred, is: 'met' },
      { name: 'not', conditions: { speedMaxPerS: 40 }, is: 'not met' },
    ],
  },
  'stirring.coupling-speed': {
    edge: { ...stirred, moves: 'demand', to: (v) => ({ conditions: { speedMaxPerS: v } }) },
    cases: [
      { name: 'stood', ...stirred, is: 'met' },
      {
        name: 'up to a fifth above: after review',
        conditions: { speedMaxPerS: 36 },
        is: 'outside standard range',
      },
      { name: 'more', conditions: { speedMaxPerS: 36.1 }, is: 'not met' },
    ],
  },
  'stirring.stirrer-speed': {
    edge: { ...stirred, moves: 'demand', to: (v) => ({ conditions: { speedMaxPerS: v } }) },
    cases: [
      { name: 'stood', ...stirred, is: 'met' },
      { name: 'not', conditions: { speedMaxPerS: 26 }, is: 'not met' },
    ],
  },
  'stirring.shaft-length': {
    cases: [
      { name: 'in the lower part', is: 'met' },
      { name: 'at 55 %', parts: { shaft: { lengthM: 0.17 * 0.55 } }, is: 'met' },
      { name: 'too high', parts: { shaft: { lengthM: 0.093 } }, is: 'not met' },
      { name: 'touches the bottom', parts: { shaft: { lengthM: 0.17 } }, is: 'not met' },
    ],
  },
  'stirring.stirrer-on-shaft': {
    cases: [
      { name: 'same', is: 'met' },
      { name: 'another', parts: { stirrer: { shaftDiameterM: 0.012 } }, is: 'not met' },
    ],
  },
  'stirring.shaft-in-coupling': {
    cases: [
      { name: 'same', is: 'met' },
      { name: 'another', parts: { coupling: { shaftDiameterM: 0.012 } }, is: 'not met' },
    ],
  },
  'stirring.stirrer-fits': {
    cases: [
      { name: 'fits', is: 'met' },
      { name: 'three quarters', parts: { stirrer: { diameterM: 0.075 } }, is: 'met' },
      { name: 'wider', parts: { stirrer: { diameterM: 0.0751 } }, is: 'not met' },
      { name: 'a quarter', parts: { stirrer: { diameterM: 0.025 } }, is: 'met' },
      { name: 'too small', parts: { stirrer: { diameterM: 0.0249 } }, is: 'not met' },
      {
        name: 'an anchor sweeps the wall',
        parts: { stirrer: { impeller: 'anchor', diameterM: 0.09 } },
        is: 'met',
      },
      {
        name: 'a ribbon that leaves the wall alone',
        parts: { stirrer: { impeller: 'double helical ribbon', diameterM: 0.07 } },
        is: 'not met',
      },
    ],
  },
  'stirring.stirrer-in-coil': {
    cases: [
      { name: 'free', parts: { coil: {} }, is: 'met' },
      { name: 'touches', parts: { coil: { innerClearanceM: 0.04 } }, is: 'not met' },
      { name: 'no coil', is: 'silent' },
    ],
  },
  'stirring.suspension': {
    edge: {
      conditions: { ...solids, speedMaxPerS: 20 },
      moves: 'limit',
      to: (v) => ({ conditions: { ...solids, speedMaxPerS: v } }),
    },
    cases: [
      { name: 'no solids', ...stirred, is: 'silent' },
      { name: 'too slow', conditions: { ...solids, speedMaxPerS: 1 }, is: 'met with caution' },
      { name: 'density of the solid unknown', conditions: { solidsMassFraction: 0.1 }, is: 'not decidable' },
    ],
  },
  'stirring.thin-batch': {
    cases: [
      {
        name: 'an anchor in water',
        parts: { stirrer: { minViscosityPaS: 0.05 } },
        ...stirred,
        is: 'met with caution',
      },
      {
        name: 'thick from the start',
        parts: { stirrer: { minViscosityPaS: 0.05 } },
        conditions: { viscosityMinPaS: 0.05 },
        is: 'met',
      },
      { name: 'meant for thin batches', ...stirred, is: 'silent' },
    ],
  },
  'stirring.viscosity': {
    edge: { ...stirred, moves: 'demand', to: (v) => ({ conditions: { viscosityMaxPaS: v } }) },
    cases: [
      { name: 'thin', ...stirred, is: 'met' },
      { name: 'too thick', conditions: { viscosityMaxPaS: 1 }, is: 'not met' },
    ],
  },
  'stirring.material': {
    cases: [
      { name: 'same', is: 'met' },
      { name: 'a galvanic pair', parts: { shaft: { material: '1.4571' } }, is: 'not met' },
    ],
  },
  'stirring.special-shaft': {
    cases: [
      { name: 'special', parts: { shaft: { special: true } }, is: 'outside standard range' },
      { name: 'of the range', is: 'silent' },
    ],
  },
  'stirring.gas-into-liquid': {
    cases: [
      { name: 'no gas', is: 'silent' },
      {
        name: 'through the surface only',
        conditions: { media: [hydrogen], batchVolumeM3: 1e-3 },
        is: 'met',
        says: /surface only/,
      },
      {
        name: 'by a dip tube',
        parts: { gasInlet: {} },
        conditions: { media: [hydrogen], batchVolumeM3: 1e-3 },
        is: 'met',
        says: /dip tube brings/,
      },
    ],
  },
  'stirring.highest-speed': {
    cases: [
      { name: 'limited', conditions: thick, is: 'met', says: /at most/ },
      { name: 'no viscosity', is: 'silent' },
    ],
  },
  'stirring.state': {
    cases: [
      { name: 'turbulent, without baffles', ...stirred, is: 'met', says: /swirls/ },
      { name: 'with four of a tenth', ...stirred, parts: { baffles: {} }, is: 'met', says: /turbulent/ },
      {
        name: 'baffles that draw more than was checked',
        ...stirred,
        parts: { baffles: { count: 8, widthM: 0.02 } },
        is: 'met with caution',
        says: /draw more/,
      },
      { name: 'no speed', conditions: { viscosityMaxPaS: 1e-3 }, is: 'silent' },
    ],
  },
};
