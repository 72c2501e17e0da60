import type { CasesOf } from '../rule-case.js';

const none = { says: /none is chosen|no sampling device|no burette|none are chosen/ };

const tilted = [{ name: 'N1', diameterM: 0.014, boltCircleM: 0.06, angleDeg: 0, tiltDeg: 15 }];
const large = [{ name: 'N1', diameterM: 0.02, boltCircleM: 0.06, angleDeg: 0, tiltDeg: 0 }];

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
        says: /no port left for coil .*: taken are N1 by .* and N2 by /,
      },
      {
        name: 'larger than any',
        parts: { sightGlass: { portsM: [0.02] } },
        is: 'not met',
        says: /none of its ports is that large/,
      },
      {
        name: 'a small part in a larger port',
        parts: { pressureGauge: { portsM: [0.006] } },
        is: 'met',
        says: /N3 by pressure gauge \(reducer 10\W+mm to 6\W+mm\)/u,
      },
      {
        name: 'reaching down just clear of the stirrer',
        parts: { temperatureProbe: { portsM: [0.014] }, stirrer: { diameterM: 0.044 } },
        is: 'met',
      },
      {
        name: 'reaching down into the circle of the stirrer',
        parts: { temperatureProbe: { portsM: [0.014] }, stirrer: { diameterM: 0.0441 } },
        is: 'not met',
        says: /at N1 and N2 it would not stand clear of turbine/,
      },
      {
        name: 'a bar turns below what reaches down',
        parts: {
          temperatureProbe: { portsM: [0.014] },
          stirrer: { impeller: 'magnetic bar', diameterM: 0.06 },
        },
        is: 'met',
      },
      {
        name: 'between shaft and arms of an anchor',
        parts: {
          temperatureProbe: { portsM: [0.01] },
          stirrer: { impeller: 'anchor', diameterM: 0.09, bladeWidthM: 0.009 },
        },
        is: 'met',
      },
      {
        name: 'into the arms of an anchor',
        parts: {
          temperatureProbe: { portsM: [0.01] },
          stirrer: { impeller: 'anchor', diameterM: 0.09, bladeWidthM: 0.0091 },
        },
        is: 'not met',
      },
      {
        name: 'into the coil',
        parts: { temperatureProbe: { portsM: [0.01] }, coil: {} },
        is: 'not met',
        says: /not stand clear of coil/,
      },
      {
        name: 'inside the coil',
        parts: { temperatureProbe: { portsM: [0.01] }, coil: { innerClearanceM: 0.072 } },
        is: 'met',
      },
      {
        name: 'between two baffles',
        parts: { temperatureProbe: { portsM: [0.01] }, baffles: { widthM: 0.03 } },
        is: 'met',
      },
      {
        name: 'on a baffle',
        parts: {
          temperatureProbe: { portsM: [0.01] },
          baffles: { widthM: 0.03 },
          cover: { ports: [{ name: 'N1', diameterM: 0.014, boltCircleM: 0.06, angleDeg: 45, tiltDeg: 0 }] },
        },
        is: 'not met',
        says: /not stand clear of baffles/,
      },
      {
        name: 'straight down through a tilted port',
        parts: { temperatureProbe: { portsM: [0.01] }, cover: { ports: tilted } },
        is: 'not met',
        says: /N1 are tilted/,
      },
      {
        name: 'above a tilted port',
        parts: { pressureGauge: { portsM: [0.01] }, cover: { ports: tilted } },
        is: 'met',
      },
      {
        name: 'two on one large port',
        parts: {
          relief: { portsM: [0.014] },
          pressureGauge: { portsM: [0.01] },
          portPiece: {},
          cover: { ports: large },
        },
        is: 'met',
        says: /N1 by multi-port piece, N1a by relief and N1b by pressure gauge/,
      },
      {
        name: 'two on one large port without a piece for it',
        parts: { relief: { portsM: [0.014] }, pressureGauge: { portsM: [0.01] }, cover: { ports: large } },
        is: 'not met',
      },
      {
        name: 'nothing reaches down through a multi-port piece',
        parts: { temperatureProbe: { portsM: [0.01] }, portPiece: {}, cover: { ports: large } },
        is: 'not met',
      },
      { name: 'all of them are to stay free', conditions: { freePortsM: [0.014, 0.01, 0] }, is: 'met' },
      {
        name: 'one that is to stay free is taken',
        parts: { pressureGauge: { portsM: [0.01] } },
        conditions: { freePortsM: [0.014, 0.01, 0] },
        is: 'not met',
        says: /a port that stays free/,
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
