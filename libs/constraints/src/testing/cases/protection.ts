import type { CasesOf } from '../rule-case.js';
import { glass, jacket } from '../parts.js';

const hydrogen = { name: 'hydrogen', role: 'gas', isKnown: true, cas: '1333-74-0' } as const;
const oxygen = { name: 'oxygen', role: 'gas', isKnown: true, cas: '7782-44-7' } as const;
const toluene = { name: 'toluene', role: 'solvent', isKnown: true, cas: '108-88-3' } as const;
const chlorine = { name: 'chlorine', role: 'gas', isKnown: true, cas: '7782-50-5' } as const;
const marking = {
  category: '2G',
  gasGroup: 'IIC',
  temperatureClass: 'T3',
  from: 'hydrogen',
  surfaceLimitK: 473.15,
};
const at = 'at the vessel' as const;
const marked = {
  powerW: 100,
  placement: at,
  protection: { category: '2G', gasGroup: 'IIC', temperatureClass: 'T4' },
} as const;
const everyMarked = {
  drive: { electrical: marked },
  heater: { electrical: marked },
  control: { electrical: marked },
};

export const protectionCases: CasesOf = {
  'hazardous-area.ignition-known': {
    cases: [
      {
        name: 'one has none',
        conditions: { ignitionUnknown: ['a new solvent'] },
        is: 'not decidable',
        says: /^a new solvent: no ignition data/,
      },
      { name: 'all have', is: 'silent' },
    ],
  },
  'hazardous-area.marking': {
    cases: [
      { name: 'marked', parts: everyMarked, conditions: { zone: '1', marking }, is: 'met' },
      { name: 'no marking', conditions: { zone: '1', marking }, is: 'not met' },
      {
        name: 'a class too hot',
        parts: {
          ...everyMarked,
          drive: {
            electrical: {
              ...marked,
              protection: { category: '2G', gasGroup: 'IIC', temperatureClass: 'T2' },
            },
          },
        },
        conditions: { zone: '1', marking },
        is: 'not met',
      },
      {
        name: 'a category too low',
        parts: {
          ...everyMarked,
          drive: {
            electrical: {
              ...marked,
              protection: { category: '3G', gasGroup: 'IIC', temperatureClass: 'T4' },
            },
          },
        },
        conditions: { zone: '1', marking },
        is: 'not met',
      },
      {
        name: 'a gas group too low',
        parts: {
          ...everyMarked,
          drive: {
            electrical: {
              ...marked,
              protection: { category: '2G', gasGroup: 'IIB', temperatureClass: 'T4' },
            },
          },
        },
        conditions: { zone: '1', marking },
        is: 'not met',
      },
      { name: 'substances unknown', parts: everyMarked, conditions: { zone: '1' }, is: 'not decidable' },
      {
        name: 'dust of which nothing is known',
        parts: {
          drive: {
            electrical: {
              ...marked,
              protection: { category: '2D', gasGroup: 'IIC', temperatureClass: 'T4' },
            },
          },
          heater: null,
          control: { electrical: { ...marked, placement: 'outside the area' } },
        },
        conditions: { zone: '21' },
        is: 'not decidable',
      },
      { name: 'no zone', is: 'silent' },
    ],
  },
  'hazardous-area.hot-surface': {
    cases: [
      {
        name: 'cool enough',
        parts: { heater: { maxWallTemperatureK: 473.15 } },
        conditions: { zone: '1', marking },
        is: 'met',
      },
      {
        name: 'hotter',
        parts: { heater: { maxWallTemperatureK: 473.16 } },
        conditions: { zone: '1', marking },
        is: 'met with caution',
      },
      {
        name: 'the medium of the jacket runs hotter than the batch',
        parts: { vessel: { jacket }, heater: null, circulator: { maxTemperatureK: 573.15 } },
        conditions: { zone: '1', marking, temperatureMaxK: 443.15 },
        is: 'met with caution',
        says: /circulator|CI-9001/,
      },
      {
        name: 'no hotter than the circulator goes',
        parts: { vessel: { jacket }, heater: null, circulator: {} },
        conditions: { zone: '1', marking, temperatureMaxK: 443.15 },
        is: 'met',
      },
      {
        name: 'no hotter than the limiter lets it',
        parts: {
          vessel: { jacket },
          heater: null,
          circulator: { maxTemperatureK: 573.15 },
          limiter: { limitRangeK: { lowest: 273.15, highest: 473.15 } },
        },
        conditions: { zone: '1', marking, temperatureMaxK: 443.15 },
        is: 'met',
      },
      { name: 'no zone', is: 'silent' },
    ],
  },
  'hazardous-area.static-charge': {
    cases: [
      {
        name: 'glass charges',
        parts: { vessel: glass },
        conditions: { zone: '2' },
        is: 'met with caution',
        says: /electrostatically/,
      },
      { name: 'metal', conditions: { zone: '2' }, is: 'met with caution', says: /bond/ },
      { name: 'no zone', is: 'silent' },
    ],
  },
  'hazardous-area.inside': {
    cases: [
      { name: 'solvent vapour', conditions: { media: [toluene] }, is: 'met with caution', says: /zone 0/ },
      { name: 'nothing burns', conditions: { media: [chlorine] }, is: 'silent' },
    ],
  },
  'protection.temperature-limiter': {
    cases: [
      { name: 'cut by a limiter', conditions: { temperatureMaxK: 500 }, is: 'met' },
      { name: 'nothing cuts it', parts: { limiter: null }, is: 'not met' },
      { name: 'set below', conditions: { temperatureMaxK: 673.15 }, is: 'met' },
      { name: 'beyond its range', conditions: { temperatureMaxK: 673.16 }, is: 'not met' },
      { name: 'no heating', parts: { heater: null }, is: 'silent' },
    ],
  },
  'protection.limit-below-ts': {
    cases: [
      { name: 'can be set to TS', is: 'met' },
      {
        name: 'at its lowest',
        parts: { limiter: { limitRangeK: { lowest: 523.15, highest: 673.15 } } },
        is: 'met',
      },
      {
        name: 'cannot',
        parts: { limiter: { limitRangeK: { lowest: 523.16, highest: 673.15 } } },
        is: 'not met',
      },
      { name: 'no limiter', parts: { limiter: null }, is: 'silent' },
    ],
  },
  'protection.shield': {
    cases: [
      { name: 'glass behind a shield', parts: { vessel: glass, shield: {} }, is: 'met' },
      { name: 'glass without', parts: { vessel: glass }, is: 'not met' },
      {
        name: 'without interlock',
        parts: { vessel: glass, shield: { interlock: false } },
        is: 'met with caution',
      },
      { name: 'as wide as it', parts: { vessel: glass, shield: { maxDiameterM: 0.16 } }, is: 'met' },
      { name: 'too narrow', parts: { vessel: glass, shield: { maxDiameterM: 0.159 } }, is: 'not met' },
      { name: 'too low', parts: { vessel: glass, shield: { maxHeightM: 0.169 } }, is: 'not met' },
      { name: 'metal needs none', is: 'silent' },
    ],
  },
  'protection.cut-offs': {
    cases: [
      { name: 'with a transmitter', conditions: { media: [hydrogen] }, is: 'met', says: /cut-off/ },
      {
        name: 'a gauge without signal',
        parts: { pressureGauge: { transmitter: false } },
        conditions: { media: [hydrogen] },
        is: 'met with caution',
      },
      {
        name: 'every gas is closed, and one that is dangerous is vented to the safe place',
        conditions: { media: [{ name: 'nitrogen', role: 'gas', isKnown: true }, hydrogen] },
        is: 'met',
        says: /closes nitrogen, hydrogen and the heating.*safe place/,
      },
      { name: 'nothing to cut', conditions: { media: [toluene] }, is: 'silent' },
    ],
  },
  'caution.explosive-mixture': {
    cases: [
      { name: 'oxygen over toluene', conditions: { media: [oxygen, toluene] }, is: 'met with caution' },
      { name: 'hydrogen over toluene', conditions: { media: [hydrogen, toluene] }, is: 'silent' },
    ],
  },
  'caution.glass-under-gas': {
    cases: [
      { name: 'glass', parts: { vessel: glass }, is: 'met with caution' },
      { name: 'metal', is: 'silent' },
    ],
  },
  'caution.hot-outside': {
    cases: [
      { name: 'burns', conditions: { temperatureMaxK: 333.16 }, is: 'met with caution', says: /insulation/ },
      { name: 'warm', conditions: { temperatureMaxK: 333.15 }, is: 'silent' },
    ],
  },
  'caution.inerting': {
    cases: [
      { name: 'hydrogen', conditions: { media: [hydrogen] }, is: 'met with caution' },
      { name: 'chlorine', conditions: { media: [chlorine] }, is: 'silent' },
    ],
  },
  'caution.oxygen-service': {
    cases: [
      { name: 'oxygen', conditions: { gases: ['oxygen'] }, is: 'met with caution', says: /grease/ },
      { name: 'hydrogen', conditions: { gases: ['hydrogen'] }, is: 'silent' },
    ],
  },
  'caution.toxic-gas': {
    cases: [
      { name: 'chlorine', conditions: { media: [chlorine] }, is: 'met with caution' },
      { name: 'hydrogen', conditions: { media: [hydrogen] }, is: 'silent' },
    ],
  },
};
