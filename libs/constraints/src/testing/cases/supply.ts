import type { CasesOf } from '../rule-case.js';

const hydrogen = { gases: ['hydrogen'] };
const reservoir = {
  kind: 'dosing reservoir',
  reservoirVolumeL: 1,
  reservoirPressurePaGauge: 2e7,
} as const;
const uptake = { ...hydrogen, concentrationMolPerM3: 1000, batchVolumeM3: 1e-3 };

const litre = { conditions: { batchVolumeM3: 1e-3, densityKgPerM3: 1000 } };

export const supplyCases: CasesOf = {
  'supply.control-loops': {
    edge: {
      conditions: { vesselsAtOnce: 1 },
      moves: 'demand',
      to: (v) => ({ conditions: { vesselsAtOnce: v } }),
    },
    cases: [
      { name: 'enough', conditions: { vesselsAtOnce: 2 }, is: 'met' },
      { name: 'too few', conditions: { vesselsAtOnce: 3 }, is: 'not met' },
    ],
  },
  'supply.family': {
    cases: [
      { name: 'of the family', is: 'met' },
      { name: 'of any', parts: { lift: { families: ['any'] } }, is: 'met' },
      { name: 'of another', parts: { lift: { families: ['Tarn'] } }, is: 'not met' },
    ],
  },
  'supply.item-life': {
    cases: [
      { name: 'all stay', is: 'silent' },
      {
        name: 'one goes',
        parts: { lift: { life: 'to be discontinued', successor: 'LF-1002', validUntil: '2027-03-31' } },
        is: 'met with caution',
        says: /last sold on 2027-03-31: LF-1002 follows it/,
      },
      {
        name: 'one goes without a successor',
        parts: { seal: { life: 'to be discontinued' } },
        is: 'met with caution',
        says: /ask for its successor/,
      },
    ],
  },
  'supply.frame-bore': {
    cases: [
      { name: 'takes it', is: 'met' },
      { name: 'does not', parts: { frame: { bores: [130, 200] } }, is: 'not met' },
    ],
  },
  'supply.frame-mass': {
    edge: { ...litre, moves: 'limit', to: (v) => ({ parts: { frame: { maxMassKg: v } } }) },
    cases: [
      { name: 'carried', ...litre, is: 'met', says: /27\.2/ },
      { name: 'two at once, one drive', ...litre, count: 2, is: 'met', says: /53\.4/ },
      { name: 'six at once are too heavy', ...litre, count: 6, is: 'not met', says: /159/ },
      {
        name: 'with another set at once, each with its batch',
        ...litre,
        beside: [
          { conditions: { batchVolumeM3: 5e-3, densityKgPerM3: 1000 }, parts: { vessel: { massKg: 99 } } },
        ],
        is: 'met with caution',
        says: /148/,
      },
      {
        name: 'with another set in turn',
        conditions: { ...litre.conditions, arrangement: 'alternate' },
        beside: [{ ...litre, count: 6 }],
        is: 'met',
        says: /27\.2/,
      },
      {
        name: 'a liquid of unknown density counts as a heavy one',
        conditions: { batchVolumeM3: 1e-3 },
        is: 'met with caution',
        says: /1500 kg\/m³/,
      },
      { name: 'batch unknown', is: 'not decidable', says: /batch/i },
      {
        name: 'nothing but gas',
        conditions: { media: [{ name: 'hydrogen', role: 'gas', isKnown: true }] },
        is: 'met',
        says: /26\.2/,
      },
      { name: 'too heavy', parts: { frame: { maxMassKg: 10 } }, is: 'not met' },
      { name: 'stands on the floor', parts: { frame: { maxMassKg: 0 } }, is: 'silent' },
    ],
  },
  'supply.frame-sets': {
    edge: {
      conditions: { vesselsAtOnce: 1 },
      moves: 'demand',
      to: (v) => ({ conditions: { vesselsAtOnce: v } }),
    },
    cases: [
      { name: 'enough', conditions: { vesselsAtOnce: 2 }, is: 'met' },
      { name: 'too few', conditions: { vesselsAtOnce: 3 }, is: 'not met' },
    ],
  },
  'supply.gas-inlet': {
    cases: [
      { name: 'inlet and supply', parts: { gasInlet: {}, gasSupply: {} }, conditions: hydrogen, is: 'met' },
      { name: 'no inlet', parts: { gasSupply: {} }, conditions: hydrogen, is: 'not met' },
      { name: 'no supply', parts: { gasInlet: {} }, conditions: hydrogen, is: 'not met' },
      { name: 'for inerting too', conditions: { inerting: true }, is: 'not met' },
      { name: 'no gas', is: 'silent' },
    ],
  },
  'supply.gas-kind': {
    cases: [
      { name: 'made for it', parts: { gasSupply: {} }, conditions: hydrogen, is: 'met' },
      { name: 'not', parts: { gasSupply: {} }, conditions: { gases: ['chlorine'] }, is: 'not met' },
      { name: 'no gas', parts: { gasSupply: {} }, is: 'silent' },
    ],
  },
  'supply.gas-pressure': {
    edge: {
      parts: { gasSupply: {} },
      conditions: { ...hydrogen, pressureMaxPaGauge: 5e6 },
      moves: 'demand',
      to: (v) => ({ conditions: { ...hydrogen, pressureMaxPaGauge: v } }),
    },
    cases: [
      {
        name: 'reaches it',
        parts: { gasSupply: {} },
        conditions: { ...hydrogen, pressureMaxPaGauge: 5e6 },
        is: 'met',
      },
      {
        name: 'does not',
        parts: { gasSupply: {} },
        conditions: { ...hydrogen, pressureMaxPaGauge: 9e6 },
        is: 'not met',
      },
      { name: 'no gas', parts: { gasSupply: {} }, conditions: { pressureMaxPaGauge: 9e6 }, is: 'silent' },
    ],
  },
  'supply.gas-flow': {
    edge: {
      parts: { gasSupply: {} },
      conditions: {
        ...hydrogen,
        supplyPressurePaGauge: 2e7,
        pressureMaxPaGauge: 5e6,
        peakUptakeMolPerS: 0.01,
      },
      moves: 'demand',
      to: (v) => ({
        conditions: {
          ...hydrogen,
          supplyPressurePaGauge: 2e7,
          pressureMaxPaGauge: 5e6,
          peakUptakeMolPerS: v,
        },
      }),
    },
    cases: [
      {
        name: 'feeds it',
        parts: { gasSupply: {} },
        conditions: {
          ...hydrogen,
          supplyPressurePaGauge: 2e7,
          pressureMaxPaGauge: 5e6,
          peakUptakeMolPerS: 0.01,
        },
        is: 'met',
      },
      {
        name: 'by the process gas, not the heavier inert one before it',
        parts: { gasSupply: {} },
        conditions: {
          gases: ['nitrogen', 'hydrogen'],
          media: [
            { name: 'nitrogen', role: 'inert gas', isKnown: true },
            { name: 'hydrogen', role: 'gas', isKnown: true },
          ],
          supplyPressurePaGauge: 2e7,
          pressureMaxPaGauge: 5e6,
          peakUptakeMolPerS: 2,
        },
        is: 'met',
      },
      {
        name: 'the smaller of two regulators feeds it',
        parts: { gasSupply: {} },
        conditions: {
          ...hydrogen,
          regulatorKv: 1e-5,
          supplyPressurePaGauge: 2e7,
          pressureMaxPaGauge: 5e6,
          peakUptakeMolPerS: 0.01,
        },
        is: 'met with caution',
      },
      {
        name: 'source no higher than the vessel',
        parts: { gasSupply: {} },
        conditions: {
          ...hydrogen,
          supplyPressurePaGauge: 4e6,
          pressureMaxPaGauge: 5e6,
          peakUptakeMolPerS: 0.01,
        },
        is: 'met with caution',
      },
      { name: 'uptake unknown', parts: { gasSupply: {} }, conditions: hydrogen, is: 'silent' },
    ],
  },
  'supply.gas-reservoir': {
    cases: [
      {
        name: 'refills told',
        parts: { gasSupply: reservoir },
        conditions: { ...uptake, pressureMaxPaGauge: 5e6 },
        is: 'met',
        says: /refills/,
      },
      {
        name: 'of the process gas, not the inert one before it',
        parts: { gasSupply: reservoir },
        conditions: {
          ...uptake,
          gases: ['nitrogen', 'hydrogen'],
          media: [
            { name: 'nitrogen', role: 'inert gas', isKnown: true },
            { name: 'hydrogen', role: 'gas', isKnown: true },
          ],
          pressureMaxPaGauge: 5e6,
        },
        is: 'met',
        says: /mol of hydrogen a filling/,
      },
      {
        name: 'holds no more than the vessel',
        parts: { gasSupply: reservoir },
        conditions: { ...uptake, pressureMaxPaGauge: 1.96e7 },
        is: 'met with caution',
      },
      {
        name: 'no reservoir',
        parts: { gasSupply: {} },
        conditions: { ...uptake, pressureMaxPaGauge: 5e6 },
        is: 'silent',
      },
    ],
  },
  'supply.uptake-recorded': {
    cases: [
      {
        name: 'measured and recorded',
        parts: { gasSupply: { recordsUptake: true } },
        conditions: { uptakeRecorded: true },
        is: 'met',
      },
      { name: 'not measured', parts: { gasSupply: {} }, conditions: { uptakeRecorded: true }, is: 'not met' },
      {
        name: 'not recorded',
        parts: { gasSupply: { recordsUptake: true }, control: { recordsUptake: false } },
        conditions: { uptakeRecorded: true },
        is: 'not met',
      },
      { name: 'not asked', is: 'silent' },
    ],
  },
  'supply.signals': {
    cases: [
      { name: 'enough channels', is: 'met' },
      { name: 'as many as signals', parts: { control: { channels: 5 } }, is: 'met' },
      { name: 'one too few', parts: { control: { channels: 4 } }, is: 'met with caution' },
    ],
  },
  'supply.utilities': {
    cases: [
      { name: 'told', ...litre, is: 'met', says: /Electrical load 1\.57.*with the batch/ },
      { name: 'batch unknown', is: 'met', says: /empty/ },
      { name: 'water', parts: { coil: {} }, is: 'met', says: /Tap water/ },
    ],
  },
};
