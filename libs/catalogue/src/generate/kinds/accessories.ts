import { z } from 'zod';
import { kind, kindOfMaterial } from '../kind.js';
import { markingWord } from '../marking-word.js';
import { finishWord } from '../part-materials.js';
import { listed, mm, sentence } from '../words.js';

export const bottomValves = kindOfMaterial(
  'bottomValve',
  {
    kind: z.enum(['flush plug', 'ball valve']),
    diameterM: z.number().positive(),
    massKg: z.number().positive(),
  },
  (row, material) => ({
    name: listed(
      `${row.kind === 'flush plug' ? 'Flush bottom valve' : 'Ball valve'} ${mm(row.diameterM)} mm`,
      `PS ${String(row.rating?.bar ?? 0)}`,
      finishWord(material, 'lined'),
    ),
    massKg: row.massKg,
    attributes: { kind: row.kind, diameterM: row.diameterM, material: material.material },
  }),
);

export const sightGlasses = kind(
  'sightGlass',
  { viewM: z.number().positive(), lamp: z.boolean(), massKg: z.number().positive() },
  (row) => ({
    name: listed(
      `Sight glass ${mm(row.portM ?? 0)} mm, PS ${String(row.rating?.bar ?? 0)}`,
      row.lamp ? 'with lamp' : 'without lamp',
      row.families.includes('Mere') && 'metal-free',
      markingWord(row.protection),
    ),
    massKg: row.massKg,
    loadW: 20,
    attributes: { diameterM: row.viewM, lamp: row.lamp },
  }),
);

export const chargingDevices = kindOfMaterial(
  'charging',
  {
    kind: z.enum(['solids funnel', 'liquids funnel', 'burette against pressure']),
    volumeL: z.number().positive(),
    massKg: z.number().positive(),
  },
  (row, material) => ({
    name: listed(
      row.kind === 'burette against pressure'
        ? `${row.volumeL < 5 ? 'Burette' : 'Dosing vessel'} ${String(row.volumeL)} L against pressure, PS ${String(row.rating?.bar ?? 0)}`
        : `${sentence(row.kind)} ${String(row.volumeL)} L`,
      material.material === 'borosilicate glass 3.3' ? 'glass' : finishWord(material, 'lined'),
      `${mm(row.portM ?? 0)} mm`,
    ),
    massKg: row.massKg,
    attributes: { kind: row.kind, volumeL: row.volumeL },
  }),
);

export const condensers = kindOfMaterial(
  'condenser',
  { areaM2: z.number().positive(), massKg: z.number().positive() },
  (row, material) => ({
    name: listed(
      `Reflux condenser ${String(row.areaM2)} m²`,
      `${mm(row.portM ?? 0)} mm`,
      material.material === 'borosilicate glass 3.3' ? 'glass' : material.material,
    ),
    massKg: row.massKg,
    attributes: { areaM2: row.areaM2, material: material.material },
  }),
);

export const baskets = kindOfMaterial(
  'basket',
  { kind: z.enum(['static', 'rotating']), bore: z.int().positive(), massKg: z.number().positive() },
  (row, material) => ({
    name: `Catalyst basket, ${row.kind}, bore ${String(row.bore)}, ${material.material}`,
    massKg: row.massKg,
    attributes: { kind: row.kind, bore: row.bore },
  }),
);

const probeWords = {
  pH: 'pH probe',
  turbidity: 'Turbidity probe',
  conductivity: 'Conductivity probe',
  'particle view': 'Particle view probe',
  torque: 'Torque measurement on the drive',
} as const;

export const processProbes = kind(
  'processProbe',
  {
    kind: z.enum(['pH', 'turbidity', 'conductivity', 'particle view', 'torque']),
    label: z.string(),
    massKg: z.number().positive(),
  },
  (row) => ({
    name: listed(
      `${probeWords[row.kind]}${row.portM === undefined ? '' : ` ${mm(row.portM)} mm`}`,
      row.label,
      markingWord(row.protection),
    ),
    massKg: row.massKg,
    attributes: { kind: row.kind },
  }),
);

export const shields = kind(
  'shield',
  {
    label: z.string(),
    maxDiameterM: z.number().positive(),
    maxHeightM: z.number().positive(),
    interlock: z.boolean(),
    massKg: z.number().positive(),
  },
  (row) => ({
    name: `Shield ${row.label}, polycarbonate, ${row.interlock ? 'interlocked door' : 'door with key'}`,
    massKg: row.massKg,
    attributes: { maxDiameterM: row.maxDiameterM, maxHeightM: row.maxHeightM, interlock: row.interlock },
  }),
);
