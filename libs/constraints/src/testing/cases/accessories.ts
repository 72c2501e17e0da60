import type { CasesOf } from '../rule-case.js';

const none = { says: /none is chosen|no sampling device|no burette|none are chosen/ };

export const accessoryCases: CasesOf = {
  'accessories.bottom-valve': {
    cases: [
      { name: 'neither port nor valve', is: 'silent' },
      { name: 'fits', parts: { vessel: { bottomPortM: 0.02 }, bottomValve: {} }, is: 'met' },
      { name: 'of another size', parts: { vessel: { bottomPortM: 0.025 }, bottomValve: {} }, is: 'not met' },
      { name: 'a port without valve', parts: { vessel: { bottomPortM: 0.02 } }, is: 'not met' },
      { name: 'a valve without port', parts: { bottomValve: {} }, is: 'not met' },
    ],
  },
  'accessories.gas-tube-reach': {
    cases: [
      { name: 'into the liquid', parts: { gasInlet: {} }, is: 'met' },
      { name: 'on the bottom', parts: { gasInlet: { reachM: 0.171 } }, is: 'not met' },
      { name: 'above the liquid', parts: { gasInlet: { reachM: 0.01 } }, is: 'not met' },
      { name: 'none', is: 'silent' },
    ],
  },
  'accessories.sampling-tube-reach': {
    cases: [
      { name: 'into the liquid', parts: { sampling: {} }, is: 'met' },
      { name: 'on the bottom', parts: { sampling: { reachM: 0.171 } }, is: 'not met' },
      { name: 'above the liquid', parts: { sampling: { reachM: 0.01 } }, is: 'not met' },
      { name: 'none', is: 'silent' },
    ],
  },
  'accessories.thermowell-reach': {
    cases: [
      { name: 'in the lower half', is: 'met' },
      { name: 'at half the depth', parts: { temperatureProbe: { reachM: 0.085 } }, is: 'met' },
      { name: 'too short', parts: { temperatureProbe: { reachM: 0.0849 } }, is: 'not met' },
      { name: 'on the bottom', parts: { temperatureProbe: { reachM: 0.17 } }, is: 'not met' },
      { name: 'just above it', parts: { temperatureProbe: { reachM: 0.1699 } }, is: 'met' },
    ],
  },
  'accessories.ports': {
    cases: [
      { name: 'nobody needs one', is: 'met' },
      {
        name: 'three in three',
        parts: {
          relief: { portsM: [0.014] },
          pressureGauge: { portsM: [0.01] },
          temperatureProbe: { portsM: [0.01] },
        },
        is: 'met',
      },
      {
        name: 'a larger one than is left',
        parts: { relief: { portsM: [0.014] }, coil: { portsM: [0.014, 0.014] } },
        is: 'not met',
      },
    ],
  },
  'accessories.sampling': {
    cases: [
      { name: 'there', parts: { sampling: {} }, conditions: { sampling: true }, is: 'met' },
      { name: 'missing', conditions: { sampling: true }, is: 'not met', ...none },
      { name: 'not asked', is: 'silent' },
    ],
  },
  'accessories.dosing': {
    cases: [
      { name: 'there', parts: { charging: {} }, conditions: { dosingAgainstPressure: true }, is: 'met' },
      {
        name: 'a funnel will not do',
        parts: { charging: { kind: 'liquids funnel' } },
        conditions: { dosingAgainstPressure: true },
        is: 'not met',
        ...none,
      },
      { name: 'not asked', is: 'silent' },
    ],
  },
  'accessories.condenser': {
    cases: [
      { name: 'there', parts: { condenser: {} }, conditions: { refluxCondenser: true }, is: 'met' },
      { name: 'missing', conditions: { refluxCondenser: true }, is: 'not met', ...none },
      { name: 'not asked', is: 'silent' },
    ],
  },
  'accessories.basket': {
    cases: [
      { name: 'there', parts: { basket: {} }, conditions: { catalystBasket: true }, is: 'met' },
      { name: 'missing', conditions: { catalystBasket: true }, is: 'not met', ...none },
      { name: 'of another bore', parts: { basket: { bore: 130 } }, is: 'not met' },
      { name: 'not asked', is: 'silent' },
    ],
  },
  'accessories.process-probe': {
    cases: [
      { name: 'there', parts: { processProbe: {} }, conditions: { processProbes: ['pH'] }, is: 'met' },
      {
        name: 'one of two',
        parts: { processProbe: {} },
        conditions: { processProbes: ['pH', 'turbidity'] },
        is: 'met with caution',
        says: /turbidity/,
      },
      {
        name: 'another one',
        parts: { processProbe: { kind: 'turbidity' } },
        conditions: { processProbes: ['pH'] },
        is: 'not met',
      },
      { name: 'not asked', is: 'silent' },
    ],
  },
};
