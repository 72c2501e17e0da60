import { z } from 'zod';
import { kind } from '../kind.js';
import { markingWord } from '../marking-word.js';
import { degrees, kelvin, listed, pascal, sentence } from '../words.js';

export const frames = kind(
  'frame',
  {
    label: z.string(),
    maxSets: z.int().positive(),
    maxMassKg: z.number().positive(),
    heightM: z.number().positive(),
    topHeightM: z.number().positive(),
    bores: z.array(z.int().positive()).min(1),
    massKg: z.number().positive(),
  },
  (row) => ({
    name: row.label,
    massKg: row.massKg,
    attributes: {
      maxSets: row.maxSets,
      maxMassKg: row.maxMassKg,
      heightM: row.heightM,
      topHeightM: row.topHeightM,
      bores: row.bores,
    },
  }),
);

const liftWords = {
  'hand crank': ['Hand-crank lift', ''],
  electric: ['Electric lift', ''],
  'electric with tilt': ['Electric lift', ' with tilt'],
} as const;

export const lifts = kind(
  'lift',
  {
    kind: z.enum(['hand crank', 'electric', 'electric with tilt']),
    moves: z.enum(['cover', 'vessel']),
    capacityKg: z.number().positive(),
    strokeM: z.number().positive(),
    tilts: z.boolean(),
    massKg: z.number().positive(),
  },
  (row) => {
    const [word, tilt] = liftWords[row.kind];
    return {
      name: listed(
        `${word}${tilt} for ${row.moves}s`,
        `${String(row.capacityKg)} kg`,
        `stroke ${String(row.strokeM)} m`,
        markingWord(row.protection),
      ),
      massKg: row.massKg,
      attributes: {
        kind: row.kind,
        moves: row.moves,
        capacityKg: row.capacityKg,
        strokeM: row.strokeM,
        tilts: row.tilts,
      },
    };
  },
);

const supplyLoadW = 10;

export const gasSupplies = kind(
  'gasSupply',
  {
    kind: z.enum(['pressure regulator', 'mass-flow controller', 'dosing reservoir']),
    gases: z.array(z.string()).min(1),
    label: z.string().optional(),
    flowLabel: z.string().optional(),
    maxOutletBar: z.number().positive(),
    flowCoefficientKv: z.number().positive().optional(),
    reservoirVolumeL: z.number().positive().optional(),
    reservoirBar: z.number().positive().optional(),
    massKg: z.number().positive(),
  },
  (row) => {
    const outlet = `${String(row.maxOutletBar)} bar`;
    const names = {
      'pressure regulator': `Regulator to ${outlet}, Kv ${String(row.flowCoefficientKv ?? 0)}`,
      'mass-flow controller': `Mass-flow controller ${row.flowLabel ?? ''}, ${outlet}`,
      'dosing reservoir': `Dosing reservoir ${String(row.reservoirVolumeL ?? 0)} L, ${String(row.reservoirBar ?? 0)} bar, with regulator to ${outlet}`,
    } as const;
    return {
      name: listed(
        names[row.kind],
        row.label,
        row.kind !== 'dosing reservoir' && markingWord(row.protection),
      ),
      massKg: row.massKg,
      loadW: supplyLoadW,
      attributes: {
        kind: row.kind,
        maxOutletPressurePaGauge: pascal(row.maxOutletBar),
        flowCoefficientKv: row.flowCoefficientKv ?? null,
        reservoirVolumeL: row.reservoirVolumeL ?? null,
        reservoirPressurePaGauge: row.reservoirBar === undefined ? null : pascal(row.reservoirBar),
        recordsUptake: row.kind !== 'pressure regulator',
        gases: row.gases,
      },
    };
  },
);

export const controllers = kind(
  'control',
  {
    label: z.string(),
    channels: z.int().positive(),
    recordsUptake: z.boolean(),
    recipes: z.boolean(),
    loops: z.int().positive(),
    massKg: z.number().positive(),
  },
  (row) => ({
    name: listed(row.label, markingWord(row.protection)),
    massKg: row.massKg,
    attributes: {
      channels: row.channels,
      recordsUptake: row.recordsUptake,
      recipes: row.recipes,
      loops: row.loops,
    },
  }),
);

export const limiters = kind(
  'limiter',
  { label: z.string(), lowestC: z.number(), highestC: z.number(), massKg: z.number().positive() },
  (row) => {
    const marking = markingWord(row.protection);
    return {
      name: listed(
        `${row.label}, ${degrees(row.lowestC)} to ${degrees(row.highestC)} °C`,
        marking === undefined ? undefined : `sensor ${marking}`,
      ),
      massKg: row.massKg,
      attributes: { limitRangeK: { lowest: kelvin(row.lowestC), highest: kelvin(row.highestC) } },
    };
  },
);

const papers = <S extends 'certificates' | 'qualification'>(slot: S) =>
  kind(slot, { label: z.string(), contains: z.array(z.string()).min(1) }, (row) => ({
    name: sentence(row.label),
    massKg: 0,
    attributes: { contains: row.contains } as never,
  }));

export const certificates = papers('certificates');
export const qualifications = papers('qualification');
