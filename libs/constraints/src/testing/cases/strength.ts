import { specialEndPaGauge } from '@flangewise/catalogue';
import { findFluid } from '@flangewise/engineering';
import type { CasesOf } from '../rule-case.js';
import { glass, jacket, lined, parts } from '../parts.js';

const rating = parts.vessel?.rating ?? {
  maxPressurePaGauge: 1e7,
  minTemperatureK: 213.15,
  maxTemperatureK: 523.15,
  vacuum: true,
};
const atEnd = { ...rating, maxPressurePaGauge: specialEndPaGauge };
/** Rp1.0/1.5 of 1.4404 at 20 °C over that at TS of 250 °C, times 1.25: the test pressure by PS. */
const testOverPs = (1.25 * 260) / 157;

const hotLiquid = (name: string, massFraction?: number) => {
  const fluid = findFluid(name);
  const cas = fluid.ok ? { cas: fluid.value.cas } : {};
  const share = massFraction === undefined ? {} : { massFraction };
  const medium = { name, role: 'solvent', isKnown: true, ...cas, ...share } as const;
  return { conditions: { media: [medium], temperatureMaxK: 373.15 } };
};

export const strengthCases: CasesOf = {
  'strength.vapour-known': {
    cases: [
      { name: 'methanol', ...hotLiquid('methanol'), is: 'silent' },
      {
        name: 'caustic soda gives off less than water',
        ...hotLiquid('sodium hydroxide', 0.12),
        is: 'silent',
      },
      { name: 'acid up to its azeotrope', ...hotLiquid('hydrochloric acid', 0.2), is: 'silent' },
      {
        name: 'acid beyond it gives off its gas',
        ...hotLiquid('hydrochloric acid', 0.37),
        is: 'not decidable',
        says: /no vapour pressure on file/,
      },
      { name: 'a dissolved gas', ...hotLiquid('ammonia', 0.25), is: 'not decidable' },
      { name: 'no temperature said', conditions: { media: [] }, is: 'silent' },
    ],
  },
  'strength.part-pressure': {
    cases: [
      { name: 'at PS', conditions: { pressureMaxPaGauge: 1e7 }, is: 'met' },
      { name: 'just above PS', conditions: { pressureMaxPaGauge: 1.000001e7 }, is: 'not met' },
      {
        name: 'past the end of the range: a special',
        parts: {
          vessel: { rating: atEnd },
          seal: { rating: atEnd },
          cover: { rating: atEnd },
          stirrer: { rating: atEnd },
          shaft: { rating: atEnd },
          coupling: { rating: atEnd },
          temperatureProbe: { rating: atEnd },
          relief: { rating: atEnd },
          pressureGauge: { rating: atEnd },
        },
        conditions: { pressureMaxPaGauge: specialEndPaGauge * 1.1 },
        is: 'outside standard range',
      },
      { name: 'no pressure said', is: 'silent' },
    ],
  },
  'strength.part-temperature': {
    cases: [
      { name: 'at TS', conditions: { temperatureMaxK: 523.15 }, is: 'met' },
      { name: 'just above TS', conditions: { temperatureMaxK: 523.16 }, is: 'not met' },
      {
        name: 'at the lowest',
        conditions: { temperatureMinK: 213.15, temperatureMaxK: 300 },
        is: 'met',
      },
      { name: 'colder', conditions: { temperatureMinK: 213.14 }, is: 'not met' },
    ],
  },
  'strength.vacuum': {
    cases: [
      { name: 'every part stands it', conditions: { vacuum: true }, is: 'met' },
      {
        name: 'a lined vessel does not',
        parts: { vessel: { rating: { ...rating, vacuum: false } } },
        conditions: { vacuum: true },
        is: 'not met',
      },
      { name: 'no vacuum', is: 'silent' },
    ],
  },
  'strength.special-vessel': {
    cases: [
      { name: 'special', parts: { vessel: { special: true } }, is: 'outside standard range' },
      { name: 'of the range', is: 'silent' },
    ],
  },
  'strength.special-cover': {
    cases: [
      { name: 'special', parts: { cover: { special: true } }, is: 'outside standard range' },
      { name: 'of the range', is: 'silent' },
    ],
  },
  'strength.rating-at-temperature': {
    edge: {
      conditions: { pressureMaxPaGauge: 5e6, temperatureMaxK: 423.15 },
      moves: 'demand',
      to: (v) => ({ conditions: { pressureMaxPaGauge: v } }),
    },
    cases: [
      {
        name: 'carried, strength from memory',
        conditions: { pressureMaxPaGauge: 5e6, temperatureMaxK: 423.15 },
        is: 'met with caution',
        says: /from memory/,
      },
      {
        name: 'carried, strength published',
        parts: { vessel: { material: 'titanium grade 2' } },
        conditions: { pressureMaxPaGauge: 5e6, temperatureMaxK: 423.15 },
        is: 'met',
      },
      {
        name: 'too much',
        conditions: { pressureMaxPaGauge: 3e7, temperatureMaxK: 523.15 },
        is: 'not met',
      },
      {
        name: 'lined: its carrier counts',
        parts: { vessel: lined },
        conditions: { pressureMaxPaGauge: 5e6, temperatureMaxK: 423.15 },
        is: 'met with caution',
      },
      {
        name: 'glass by its own rules',
        parts: { vessel: glass },
        conditions: { pressureMaxPaGauge: 1.3e6, temperatureMaxK: 373.15 },
        is: 'not met',
      },
      {
        name: 'no design data',
        parts: { vessel: { material: 'tantalum' } },
        conditions: { pressureMaxPaGauge: 1e5 },
        is: 'not decidable',
      },
    ],
  },
  'strength.declared-pressure': {
    edge: {
      moves: 'demand',
      to: (v) => ({ parts: { vessel: { rating: { ...rating, maxPressurePaGauge: v } } } }),
    },
    cases: [
      {
        name: 'titanium at a PS for steel',
        parts: { vessel: { material: 'titanium grade 2' } },
        is: 'not met',
      },
      { name: 'PS of 1.4404', is: 'met with caution' },
      {
        name: 'published strength',
        parts: {
          vessel: { material: 'titanium grade 2', rating: { ...rating, maxPressurePaGauge: 6e6 } },
        },
        is: 'met',
      },
    ],
  },
  'strength.vacuum-and-jacket': {
    edge: {
      parts: { vessel: { jacket } },
      moves: 'demand',
      to: (v) => ({ parts: { vessel: { jacket: { ...jacket, maxPressurePaGauge: v } } } }),
    },
    cases: [
      {
        name: 'jacket and vacuum',
        parts: { vessel: { jacket } },
        conditions: { vacuum: true, temperatureMaxK: 423.15 },
        is: 'met with caution',
        says: /together/,
      },
      {
        name: 'the wall would collapse',
        parts: {
          vessel: {
            jacket,
            geometry: { ...glass.geometry, innerDiameterM: 0.8, wallThicknessM: 0.002, endThicknessM: 0.003 },
          },
        },
        conditions: { vacuum: true },
        is: 'not met',
      },
      { name: 'neither', is: 'silent' },
    ],
  },
  'strength.pressure-test': {
    edge: {
      moves: 'demand',
      to: (v) => ({
        parts: { vessel: { rating: { ...rating, maxPressurePaGauge: v / testOverPs } } },
      }),
    },
    cases: [
      { name: 'stands its test', is: 'met with caution' },
      {
        name: 'would yield in its test',
        parts: { vessel: { rating: { ...rating, maxPressurePaGauge: 3e7 } } },
        is: 'not met',
      },
      { name: 'glass is not tested with metal rules', parts: { vessel: glass }, is: 'silent' },
    ],
  },
  'strength.total-pressure': {
    cases: [
      {
        name: 'total stated',
        conditions: {
          media: [{ name: 'methanol', role: 'solvent', isKnown: true, cas: '67-56-1' }],
          gases: ['hydrogen'],
          statedPressurePaGauge: 6e6,
          pressureMeans: 'total',
          temperatureMaxK: 423.15,
        },
        is: 'met',
        says: /methanol has/,
      },
      {
        name: 'of the process gas, not the inert one before it',
        conditions: {
          media: [
            { name: 'methanol', role: 'solvent', isKnown: true, cas: '67-56-1' },
            { name: 'nitrogen', role: 'inert gas', isKnown: true },
          ],
          gases: ['nitrogen', 'hydrogen'],
          statedPressurePaGauge: 6e6,
          pressureMeans: 'total',
          temperatureMaxK: 423.15,
        },
        is: 'met',
        says: /total hydrogen has/,
      },
      {
        name: 'above PS if the gas alone is meant',
        conditions: {
          media: [{ name: 'methanol', role: 'solvent', isKnown: true, cas: '67-56-1' }],
          gases: ['hydrogen'],
          statedPressurePaGauge: 9.5e6,
          temperatureMaxK: 423.15,
        },
        is: 'met with caution',
        says: /Above PS/,
      },
      { name: 'no gas', is: 'silent' },
    ],
  },
};
