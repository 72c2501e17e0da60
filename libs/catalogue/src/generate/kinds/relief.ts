import { z } from 'zod';
import { kind } from '../kind.js';
import { markingWord } from '../marking-word.js';
import { listed, mm, pascal } from '../words.js';

/** Share of the port that a burst disc leaves free. */
const freeShare = 0.8;
/** Rating of a disc holder over the burst pressure of its disc. */
const holderRating = 1.5;

export const discs = kind(
  'relief',
  {
    burstBar: z.number().positive(),
    tolerance: z.number().positive(),
    operatingRatio: z.number().positive(),
    vacuumSupport: z.boolean(),
    indicator: z.boolean(),
    word: z.string().optional(),
  },
  (row, material) => {
    const port = row.portM ?? 0;
    return {
      name: listed(
        `Bursting disc ${mm(port)} mm, ${String(row.burstBar)} bar`,
        row.word ?? material?.material,
        row.vacuumSupport && 'vacuum support',
      ),
      massKg: Number((0.15 + 30 * port).toPrecision(3)),
      ratedBar: Number((holderRating * row.burstBar).toPrecision(5)),
      noVacuum: !row.vacuumSupport,
      attributes: {
        burstPressurePaGauge: pascal(row.burstBar),
        tolerance: row.tolerance,
        operatingRatio: row.operatingRatio,
        areaM2: Number((freeShare * (Math.PI / 4) * port ** 2).toPrecision(5)),
        material: material?.material ?? '',
        vacuumSupport: row.vacuumSupport,
        indicator: row.indicator,
      },
    };
  },
);

/** Pipe with bends and supports, kilograms per millimetre of its diameter. */
const ventMassPerMm = 0.12;

export const ventLines = kind(
  'ventLine',
  {
    diameterM: z.number().positive(),
    discM: z.number().positive().meta({ description: 'Largest disc that it is meant for' }),
    kind: z.enum(['to outside', 'to catch tank', 'to scrubber']),
  },
  (row) => ({
    name: `Vent line ${mm(row.diameterM)} mm ${row.kind}, for discs up to ${mm(row.discM)} mm`,
    massKg: ventMassPerMm * row.diameterM * 1000,
    attributes: { diameterM: row.diameterM, kind: row.kind },
  }),
);

export const gauges = kind(
  'pressureGauge',
  {
    rangeBar: z.number().positive(),
    transmitter: z.boolean(),
    massKg: z.number().positive(),
    word: z.string().optional(),
  },
  (row, material) => ({
    name: listed(
      `Pressure ${row.transmitter ? 'transmitter' : 'gauge'} 0 to ${String(row.rangeBar)} bar`,
      `${mm(row.portM ?? 0)} mm`,
      row.word ?? material?.material,
      markingWord(row.protection),
    ),
    massKg: row.massKg,
    ratedBar: row.rangeBar,
    loadW: 1,
    attributes: { rangePaGauge: pascal(row.rangeBar), transmitter: row.transmitter },
  }),
);

const limitWords = {
  'relief valve in the feed': 'Relief valve in the gas feed',
  'pressure limiter': 'Pressure limiter that shuts the gas',
  'own connector': 'Own gas connector and fixed reducer',
} as const;

export const gasLimits = kind(
  'gasLimit',
  {
    kind: z.enum(['relief valve in the feed', 'pressure limiter', 'own connector']),
    setBar: z.number().positive(),
    massKg: z.number().positive(),
  },
  (row) => ({
    name: `${limitWords[row.kind]}, ${String(row.setBar)} bar`,
    massKg: row.massKg,
    loadW: 15,
    attributes: { kind: row.kind, setPressurePaGauge: pascal(row.setBar) },
  }),
);
