import type { CasesOf } from '../rule-case.js';
import { glass, jacket } from '../parts.js';

const toluene = { name: 'toluene', role: 'solvent', isKnown: true, cas: '108-88-3' } as const;
const jacketed = { vessel: { jacket }, heater: null, circulator: {}, fluid: {} };
const batch = {
  media: [toluene],
  batchVolumeM3: 0.8e-3,
  densityKgPerM3: 867,
  heatCapacityJPerKgK: 1700,
  temperatureMinK: 293.15,
  temperatureMaxK: 423.15,
  viscosityMaxPaS: 6e-4,
} as const;
const reaction = { ...batch, temperatureUsualK: 373.15, peakHeatW: 300, exothermic: true };

export const heatCases: CasesOf = {
  'heat.circulator-span': {
    cases: [
      {
        name: 'covers',
        parts: jacketed,
        conditions: { temperatureMinK: 263.15, temperatureMaxK: 463.15 },
        is: 'met',
      },
      { name: 'too hot', parts: jacketed, conditions: { temperatureMaxK: 463.16 }, is: 'not met' },
      { name: 'too cold', parts: jacketed, conditions: { temperatureMinK: 263.14 }, is: 'not met' },
      { name: 'no circulator', is: 'silent' },
    ],
  },
  'heat.coil-fits': {
    cases: [
      { name: 'fits', parts: { coil: {} }, is: 'met' },
      { name: 'other bore', parts: { coil: { bore: 130 } }, is: 'not met' },
      { name: 'too deep', parts: { coil: { reachM: 0.17 } }, is: 'not met' },
      { name: 'none', is: 'silent' },
    ],
  },
  'heat.cold-source': {
    cases: [
      { name: 'tap water will do', conditions: { temperatureMinK: 288.15 }, is: 'silent' },
      { name: 'colder, with a circulator', parts: jacketed, conditions: { temperatureMinK: 270 }, is: 'met' },
      { name: 'colder, without', conditions: { temperatureMinK: 288.14 }, is: 'not met' },
    ],
  },
  'heat.cooling': {
    cases: [
      { name: 'a coil', parts: { coil: {} }, conditions: { exothermic: true }, is: 'met' },
      { name: 'nothing', conditions: { exothermic: true }, is: 'not met' },
      { name: 'gives no heat', is: 'silent' },
    ],
  },
  'heat.fluid-span': {
    cases: [
      { name: 'covers', parts: jacketed, conditions: { temperatureMaxK: 483.15 }, is: 'met' },
      { name: 'too hot', parts: jacketed, conditions: { temperatureMaxK: 483.16 }, is: 'not met' },
      { name: 'too cold', parts: jacketed, conditions: { temperatureMinK: 253.14 }, is: 'not met' },
      { name: 'a circulator without fluid', parts: { ...jacketed, fluid: null }, is: 'not met' },
      { name: 'neither', is: 'silent' },
    ],
  },
  'heat.source': {
    cases: [
      { name: 'a mantle', conditions: { temperatureMaxK: 400 }, is: 'met' },
      { name: 'nothing', parts: { heater: null }, conditions: { temperatureMaxK: 400 }, is: 'not met' },
      { name: 'cold', parts: { heater: null }, conditions: { temperatureMaxK: 313.15 }, is: 'silent' },
      { name: 'a mantle round a jacket', parts: { vessel: { jacket } }, is: 'not met' },
      { name: 'a circulator without a jacket', parts: { circulator: {} }, is: 'not met' },
    ],
  },
  'heat.heat-up-time': {
    edge: {
      conditions: { ...batch, heatUpTimeS: 3600 },
      moves: 'limit',
      to: (v) => ({ conditions: { ...batch, heatUpTimeS: v } }),
    },
    cases: [
      { name: 'in time', conditions: { ...batch, heatUpTimeS: 3600 }, is: 'met with caution' },
      { name: 'too slow', conditions: { ...batch, heatUpTimeS: 60 }, is: 'not met' },
      { name: 'by the jacket', parts: jacketed, conditions: { ...batch, heatUpTimeS: 7200 }, is: 'silent' },
      { name: 'batch unknown', conditions: { temperatureMaxK: 400, heatUpTimeS: 60 }, is: 'not decidable' },
      {
        name: 'never gets there',
        parts: { heater: { powerW: 5 } },
        conditions: { ...batch, heatUpTimeS: 7200 },
        is: 'not met',
      },
      { name: 'no time asked', conditions: batch, is: 'silent' },
    ],
  },
  'heat.heat-up-time-by-jacket': {
    edge: {
      parts: jacketed,
      conditions: { ...batch, heatUpTimeS: 7200 },
      moves: 'limit',
      to: (v) => ({ parts: jacketed, conditions: { ...batch, heatUpTimeS: v } }),
    },
    cases: [
      {
        name: 'in time',
        parts: jacketed,
        conditions: { ...batch, heatUpTimeS: 7200 },
        is: 'met with caution',
      },
      { name: 'too slow', parts: jacketed, conditions: { ...batch, heatUpTimeS: 60 }, is: 'not met' },
      {
        name: 'batch unknown',
        parts: jacketed,
        conditions: { temperatureMaxK: 400, heatUpTimeS: 60 },
        is: 'not decidable',
      },
      { name: 'by a mantle', conditions: { ...batch, heatUpTimeS: 7200 }, is: 'silent' },
      { name: 'no time asked', parts: jacketed, conditions: batch, is: 'silent' },
    ],
  },
  'heat.heat-up': {
    cases: [
      { name: 'told', conditions: batch, is: 'met', says: /min/ },
      {
        name: 'never gets there',
        parts: { heater: { powerW: 5 } },
        conditions: batch,
        is: 'met with caution',
      },
      { name: 'a time was asked', conditions: { ...batch, heatUpTimeS: 60 }, is: 'silent' },
    ],
  },
  'heat.cool-down': {
    cases: [
      { name: 'by a coil', parts: { coil: {} }, conditions: batch, is: 'met', says: /about/ },
      { name: 'by the room', conditions: batch, is: 'met', says: /hours/ },
      { name: 'never hot', conditions: { temperatureMaxK: 330 }, is: 'silent' },
    ],
  },
  'heat.heater-fits': {
    cases: [
      { name: 'fits', is: 'met' },
      { name: 'other bore', parts: { heater: { bore: 130 } }, is: 'not met' },
      { name: 'at its width', parts: { heater: { maxVesselDiameterM: 0.12 } }, is: 'met' },
      { name: 'too narrow', parts: { heater: { maxVesselDiameterM: 0.1199 } }, is: 'not met' },
      {
        name: 'widened for a special',
        parts: { vessel: { special: true }, heater: { maxVesselDiameterM: 0.1 } },
        is: 'outside standard range',
      },
      { name: 'on glass', parts: { vessel: glass }, is: 'not met' },
      { name: 'none', parts: { heater: null }, is: 'silent' },
    ],
  },
  'heat.heater-temperature': {
    edge: {
      conditions: { temperatureMaxK: 500 },
      moves: 'demand',
      to: (v) => ({ conditions: { temperatureMaxK: v - 10 } }),
    },
    cases: [
      { name: 'hot enough', conditions: { temperatureMaxK: 500 }, is: 'met' },
      { name: 'not', conditions: { temperatureMaxK: 670 }, is: 'not met' },
      { name: 'not said', is: 'not decidable' },
      { name: 'none', parts: { heater: null }, is: 'silent' },
    ],
  },
  'heat.pump-pressure': {
    edge: {
      parts: jacketed,
      moves: 'demand',
      to: (v) => ({ parts: { ...jacketed, circulator: { pumpPressurePaGauge: v } } }),
    },
    cases: [
      { name: 'below PS', parts: jacketed, is: 'met' },
      {
        name: 'above PS',
        parts: { ...jacketed, circulator: { pumpPressurePaGauge: 8e5 } },
        is: 'not met',
      },
      {
        name: 'held by its control',
        parts: { ...jacketed, circulator: { pumpPressurePaGauge: 8e5, pressureControlled: true } },
        is: 'met',
      },
      { name: 'no jacket', is: 'silent' },
    ],
  },
  'heat.removal': {
    edge: {
      parts: { coil: {} },
      conditions: reaction,
      moves: 'demand',
      to: (v) => ({ parts: { coil: {} }, conditions: { ...reaction, peakHeatW: v } }),
    },
    cases: [
      {
        name: 'by the coil',
        parts: { coil: {} },
        conditions: reaction,
        is: 'met with caution',
        says: /lower end/,
      },
      {
        name: 'by the jacket',
        parts: jacketed,
        conditions: { ...reaction, peakHeatW: 100 },
        is: 'met with caution',
      },
      {
        name: 'too much',
        parts: { coil: {} },
        conditions: { ...reaction, peakHeatW: 5000 },
        is: 'not met',
      },
      {
        name: 'no colder than the water',
        parts: { coil: {} },
        conditions: { ...reaction, temperatureUsualK: 290 },
        is: 'not met',
      },
      {
        name: 'uptake unknown',
        parts: { coil: {} },
        conditions: { exothermic: true },
        is: 'not decidable',
      },
      { name: 'gives no heat', parts: { coil: {} }, is: 'silent' },
    ],
  },
  'heat.removal-by-films': {
    cases: [
      {
        name: 'by the coil',
        parts: { coil: {} },
        conditions: { ...reaction, speedMaxPerS: 15 },
        is: 'met',
        says: /coil U = /,
      },
      {
        name: 'by the jacket',
        parts: jacketed,
        conditions: { ...reaction, speedMaxPerS: 15, peakHeatW: 50 },
        is: 'met',
        says: /jacket U = /,
      },
      {
        name: 'more than the films take',
        parts: { coil: {} },
        conditions: { ...reaction, speedMaxPerS: 15, peakHeatW: 5e4 },
        is: 'met with caution',
      },
      { name: 'speed unknown', parts: { coil: {} }, conditions: reaction, is: 'silent' },
    ],
  },
  'heat.uptake-limit': {
    cases: [
      {
        name: 'allowed',
        parts: { coil: {} },
        conditions: { ...reaction, heatOfReactionJPerMol: -1.2e5, gases: ['hydrogen'] },
        is: 'met',
        says: /uptake of/,
      },
      {
        name: 'asked for more',
        parts: { coil: {} },
        conditions: {
          ...reaction,
          heatOfReactionJPerMol: -1.2e5,
          gases: ['hydrogen'],
          peakUptakeMolPerS: 0.1,
        },
        is: 'met with caution',
      },
      {
        name: 'takes heat up',
        parts: { coil: {} },
        conditions: { ...reaction, heatOfReactionJPerMol: 1e5, gases: ['hydrogen'] },
        is: 'silent',
      },
    ],
  },
  'heat.adiabatic-rise': {
    cases: [
      {
        name: 'stays below TS',
        conditions: { ...batch, heatOfReactionJPerMol: -1e5, concentrationMolPerM3: 500 },
        is: 'met',
        says: /rise by/,
      },
      {
        name: 'goes above TS',
        conditions: { ...batch, heatOfReactionJPerMol: -2e5, concentrationMolPerM3: 2000 },
        is: 'met with caution',
        says: /Feed slowly/,
      },
      {
        name: 'goes above TS from the highest temperature, not from the usual one',
        conditions: {
          ...batch,
          temperatureUsualK: 300,
          heatOfReactionJPerMol: -1e5,
          temperatureMaxK: 520,
          concentrationMolPerM3: 500,
        },
        is: 'met with caution',
        says: /Feed slowly/,
      },
      {
        name: 'counted per mole of gas',
        conditions: {
          ...batch,
          gases: ['hydrogen'],
          heatOfReactionJPerMol: -1e5,
          concentrationMolPerM3: 500,
        },
        is: 'met with caution',
        says: /moles of gas/,
      },
      { name: 'nothing known', is: 'silent' },
    ],
  },
  'heat.thermal-shock': {
    cases: [
      {
        name: 'small span',
        parts: { vessel: glass },
        conditions: { temperatureMaxK: 323.15, pressureMaxPaGauge: 1e5 },
        is: 'met',
      },
      {
        name: 'large span beside the pressure',
        parts: { vessel: glass },
        conditions: { temperatureMaxK: 423.15, pressureMaxPaGauge: 6e5 },
        is: 'met with caution',
      },
      {
        name: 'stands none',
        parts: { vessel: { ...glass, thermalShockK: 0 } },
        is: 'not met',
      },
      { name: 'metal', is: 'silent' },
    ],
  },
  'caution.cooling-coil': {
    cases: [
      {
        name: 'steam lock',
        parts: { coil: {} },
        conditions: { temperatureMaxK: 374 },
        is: 'met with caution',
        says: /steam lock/,
      },
      {
        name: 'below boiling water',
        parts: { coil: {} },
        conditions: { temperatureMaxK: 372 },
        is: 'met with caution',
        says: /flowing back\.$/,
      },
      { name: 'no coil', is: 'silent' },
    ],
  },
};
