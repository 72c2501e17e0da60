import { impeller } from '@flangewise/model';
import { z } from 'zod';
import { kind, kindOfMaterial } from '../kind.js';
import { finishWord, partDensity } from '../part-materials.js';
import { kelvin, listed, mm, power, sentence, statedMass } from '../words.js';
import { markingWord } from '../marking-word.js';

/** Impellers: mass from the share of the cube that is solid, speed from the tip speed that they stand. */
export const stirrers = kindOfMaterial(
  'stirrer',
  {
    impeller,
    diameterM: z.number().positive(),
    bladeCount: z.int().positive(),
    bladeWidthShare: z.number().positive().max(1),
    shaftDiameterM: z.number().positive(),
    solidShare: z.number().positive().max(1).optional(),
    massKg: z.number().positive().optional(),
    minViscosityPaS: z.number().min(0),
    maxViscosityPaS: z.number().positive(),
    speedCapPerS: z.number().positive(),
    tipSpeedMPerS: z.number().positive(),
    inducesGas: z.boolean(),
  },
  (row, material) => {
    const { diameterM } = row;
    const tipPerS = Math.floor((10 * row.tipSpeedMPerS) / (Math.PI * diameterM)) / 10;
    return {
      name: `${sentence(row.impeller)} ${mm(diameterM)} mm, ${finishWord(material, 'coated')}`,
      massKg: row.massKg ?? statedMass((row.solidShare ?? 0) * partDensity(material) * diameterM ** 3),
      attributes: {
        impeller: row.impeller,
        material: material.material,
        diameterM,
        bladeCount: row.bladeCount,
        bladeWidthM: Number((row.bladeWidthShare * diameterM).toPrecision(5)),
        shaftDiameterM: row.shaftDiameterM,
        minViscosityPaS: row.minViscosityPaS,
        maxViscosityPaS: row.maxViscosityPaS,
        maxSpeedPerS: Math.min(row.speedCapPerS, tipPerS),
        inducesGas: row.inducesGas,
      },
    };
  },
);

/** Hub, collar and keys over the plain shaft. */
const shaftAddition = 1.1;

export const shafts = kindOfMaterial(
  'shaft',
  {
    lengthM: z.number().positive(),
    diameterM: z.number().positive(),
    bearingSpanM: z.number().min(0),
    hanger: z.boolean().default(false),
    massKg: z.number().positive().optional(),
  },
  (row, material) => {
    const { lengthM, diameterM, bearingSpanM } = row;
    const section = (Math.PI / 4) * diameterM ** 2;
    return {
      name: row.hanger
        ? `Hanger for magnetic bars, ${mm(lengthM)} mm, ${material.material}`
        : `Shaft ${mm(diameterM)} mm, ${mm(lengthM)} mm free, ${finishWord(material, 'sheathed')}`,
      massKg:
        row.massKg ?? statedMass(shaftAddition * partDensity(material) * section * (lengthM + bearingSpanM)),
      attributes: { material: material.material, lengthM, diameterM, bearingSpanM, bore: null },
    };
  },
);

/** Baffles hang over this share of the bore. */
const baffleLength = 1.4;
const polymerDensity = 2200;

export const baffleCages = kindOfMaterial(
  'baffles',
  {
    bore: z.int().positive(),
    count: z.int().positive(),
    widthM: z.number().positive(),
    thicknessM: z.number().positive(),
  },
  ({ bore, count, widthM, thicknessM }, material) => ({
    name: `Baffles ${String(count)} × ${mm(widthM)} mm, bore ${String(bore)}, ${material.material}`,
    massKg: statedMass(
      (material.material === 'PTFE' ? polymerDensity : partDensity(material)) *
        count *
        widthM *
        thicknessM *
        baffleLength *
        (bore / 1000),
    ),
    attributes: { material: material.material, bore, count, widthM },
  }),
);

export const couplings = kind(
  'coupling',
  {
    kind: z.enum(['magnetic', 'magnetic, metal-free']),
    bushing: z.enum(['none', 'small', 'medium', 'large']),
    ratedTorqueNm: z.number().positive(),
    magnet: z.enum(['NdFeB', 'SmCo5', 'Sm2Co17', 'hard ferrite']),
    cooled: z.boolean(),
    maxMagnetC: z.number(),
    maxSpeedPerS: z.number().positive(),
    shaftDiameterM: z.number().positive(),
    massKg: z.number().positive(),
  },
  ({ maxMagnetC, massKg, ...row }, material) => ({
    name:
      row.bushing === 'none'
        ? `Rotating field for magnetic bars, ${String(row.ratedTorqueNm)} N·m`
        : listed(
            `Magnetic coupling ${String(row.ratedTorqueNm)} N·m`,
            row.cooled && 'cooled',
            row.kind === 'magnetic' ? material?.material : 'metal-free',
          ),
    massKg,
    attributes: {
      kind: row.kind,
      bushing: row.bushing,
      ratedTorqueNm: row.ratedTorqueNm,
      magnet: row.magnet,
      cooled: row.cooled,
      maxMagnetTemperatureK: kelvin(maxMagnetC),
      maxSpeedPerS: row.maxSpeedPerS,
      shaftDiameterM: row.shaftDiameterM,
    },
  }),
);

/** Motor and controller together. */
const driveEfficiency = 0.74;

export const drives = kind(
  'drive',
  {
    geared: z.boolean(),
    powerW: z.number().positive(),
    maxTorqueNm: z.number().positive(),
    minSpeedPerS: z.number().positive(),
    maxSpeedPerS: z.number().positive(),
    massKg: z.number().positive(),
  },
  (row) => ({
    name: listed(
      `${row.geared ? 'Geared drive' : 'Drive'} ${power(row.powerW)}`,
      `${String(row.maxTorqueNm)} N·m`,
      markingWord(row.protection),
    ),
    massKg: row.massKg,
    loadW: Math.round(row.powerW / driveEfficiency),
    attributes: {
      powerW: row.powerW,
      maxTorqueNm: row.maxTorqueNm,
      minSpeedPerS: row.minSpeedPerS,
      maxSpeedPerS: row.maxSpeedPerS,
    },
  }),
);
