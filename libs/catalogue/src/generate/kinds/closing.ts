import { boltStressArea, evaluate } from '@flangewise/engineering';
import { z } from 'zod';
import { range } from '../../range.js';
import { kind } from '../kind.js';
import { mm, sentence, statedMass } from '../words.js';

/** A bolt with its nut and washers weighs as this many diameters of its bar. */
const boltLengthOverDiameter = 9.6;
const steelDensity = 7850;
const secondsPerBolt = 60;
/** Rated forces are stated to the hundred newtons below, large ones to the kilonewton. */
const forceStepN = (forceN: number): number => (forceN < 50_000 ? 100 : 1000);

const boltedForceN = (count: number, diameterM: number, pitchM: number): number => {
  const area = evaluate(boltStressArea, { diameterM, pitchM });
  if (!area.ok) throw new Error(area.error.message);
  const forceN = count * area.value.areaM2 * range.bolting.stressMPa * 1e6;
  const step = forceStepN(forceN);
  return Math.floor(forceN / step) * step;
};

export const closures = kind(
  'closure',
  {
    kind: z.enum(['bolted', 'clamp', 'segment']),
    bore: z.int().positive(),
    label: z.string(),
    interlock: z.boolean(),
    needsLift: z.boolean(),
    boltCount: z.int().positive().optional(),
    boltDiameterM: z.number().positive().optional(),
    boltPitchM: z.number().positive().optional(),
    sealDiameterM: z.number().positive().optional(),
    ratedForceN: z.number().positive().optional(),
    openingTimeS: z.number().positive().optional(),
    massKg: z.number().positive().optional(),
  },
  (row) => {
    const { boltCount: count = 0, boltDiameterM: diameterM = 0, boltPitchM: pitchM = 0 } = row;
    const bolted = row.kind === 'bolted';
    return {
      name: bolted
        ? `Bolted closure, bore ${String(row.bore)}, ${String(count)} × M${mm(diameterM)}, ${row.label}`
        : `${sentence(row.kind)} closure with pressure interlock, bore ${String(row.bore)}, ${row.label}`,
      massKg:
        row.massKg ??
        statedMass(steelDensity * (Math.PI / 4) * diameterM ** 3 * boltLengthOverDiameter * count),
      attributes: {
        kind: row.kind,
        bore: row.bore,
        ratedForceN: row.ratedForceN ?? boltedForceN(count, diameterM, pitchM),
        openingTimeS: row.openingTimeS ?? count * secondsPerBolt,
        interlock: row.interlock,
        needsLift: row.needsLift,
        bolts: bolted ? { count, diameterM, pitchM } : null,
      },
    };
  },
);

/** Mass of a ring by the square of its bore: 2 g at a bore of 32 mm. */
const ringMassKg = (bore: number): number => 2e-6 * bore ** 2;

export const seals = kind(
  'seal',
  {
    kind: z.enum(['O-ring', 'flat gasket', 'metal ring']),
    material: z.string(),
    word: z.string(),
    bore: z.int().positive(),
    diameterM: z.number().positive(),
    gasketFactor: z.number().min(0),
    seatingStressPa: z.number().min(0),
    standsDecompression: z.boolean(),
  },
  (row) => ({
    name: `${row.word}, bore ${String(row.bore)}`,
    massKg: ringMassKg(row.bore),
    attributes: {
      kind: row.kind,
      material: row.material,
      bore: row.bore,
      diameterM: row.diameterM,
      gasketFactor: row.gasketFactor,
      seatingStressPa: row.seatingStressPa,
      standsDecompression: row.standsDecompression,
    },
  }),
);
