import { evaluate, heatTransferFluid } from '@flangewise/engineering';
import { z } from 'zod';
import { kind, kindOfMaterial } from '../kind.js';
import { markingWord } from '../marking-word.js';
import { partDensity } from '../part-materials.js';
import { degrees, kelvin, listed, mm, power, statedMass } from '../words.js';

export const heaters = kind(
  'heater',
  {
    kind: z.enum(['block', 'mantle']),
    bore: z.int().positive(),
    maxVesselDiameterM: z.number().positive(),
    powerW: z.number().positive(),
    powerShare: z.number().positive().max(1).default(1).meta({ description: 'What a marked one may give' }),
    maxWallC: z.number(),
    massKg: z.number().positive(),
  },
  (row) => {
    const powerW = Math.round(row.powerW * row.powerShare);
    return {
      name: listed(
        `${row.kind === 'block' ? 'Heating block' : 'Electric mantle'}, bore ${String(row.bore)}`,
        `vessels up to ${mm(row.maxVesselDiameterM)} mm`,
        power(powerW),
        markingWord(row.protection),
      ),
      massKg: row.massKg,
      loadW: powerW,
      attributes: {
        bore: row.bore,
        maxVesselDiameterM: row.maxVesselDiameterM,
        powerW,
        maxWallTemperatureK: kelvin(row.maxWallC),
      },
    };
  },
);

const tubeWallM = 0.001;
/** Ferrules and supports over the plain tube. */
const coilAddition = 1.2;

/** Coils: area of the turns; mass of the tube with its two risers. */
export const coils = kindOfMaterial(
  'coil',
  {
    bore: z.int().positive(),
    tubeDiameterM: z.number().positive(),
    coilDiameterM: z.number().positive(),
    turns: z.number().positive(),
  },
  (row, material) => {
    const { bore, tubeDiameterM, coilDiameterM, turns } = row;
    const turnedM = Math.PI * coilDiameterM * turns;
    const areaM2 = Number((Math.PI * tubeDiameterM * turnedM).toPrecision(6));
    const shown =
      areaM2 < 0.1
        ? `${String(Math.round(areaM2 * 1e4))} cm²`
        : `${String(Number(areaM2.toPrecision(3)))} m²`;
    const section = Math.PI * (tubeDiameterM - tubeWallM) * tubeWallM;
    return {
      name: `Cooling coil, bore ${String(bore)}, ${shown}, ${material.material}`,
      massKg: statedMass(coilAddition * partDensity(material) * section * (turnedM + 2 * (row.reachM ?? 0))),
      attributes: {
        bore,
        material: material.material,
        tubeDiameterM,
        coilDiameterM,
        turns,
        areaM2,
        innerClearanceM: Number((coilDiameterM - tubeDiameterM).toPrecision(5)),
      },
    };
  },
);

/** Pump and controls take a quarter on top of the heating. */
const circulatorLoad = 1.25;

export const circulators = kind(
  'circulator',
  {
    heatingPowerW: z.number().positive(),
    cooling: z.array(z.strictObject({ temperatureC: z.number(), powerW: z.number().min(0) })).min(2),
    minC: z.number(),
    maxC: z.number(),
    flowM3PerS: z.number().positive(),
    pumpBar: z.number().positive(),
    pressureControlled: z.boolean(),
    massKg: z.number().positive(),
    label: z.string().optional(),
  },
  (row) => ({
    name: listed(
      `Circulator ${power(row.heatingPowerW)}`,
      `${degrees(row.minC)} to ${degrees(row.maxC)} °C`,
      row.label ?? (row.pressureControlled && 'pressure-controlled'),
      markingWord(row.protection),
    ),
    massKg: row.massKg,
    loadW: row.heatingPowerW * circulatorLoad,
    attributes: {
      heatingPowerW: row.heatingPowerW,
      coolingPowerW: row.cooling.map(({ temperatureC, powerW }) => ({
        temperatureK: kelvin(temperatureC),
        powerW,
      })),
      minTemperatureK: kelvin(row.minC),
      maxTemperatureK: kelvin(row.maxC),
      flowM3PerS: row.flowM3PerS,
      pumpPressurePaGauge: Math.round(row.pumpBar * 1e5),
      pressureControlled: row.pressureControlled,
    },
  }),
);

const drumM3 = 0.02;

/** Jacket fluids by the drum: density and heat capacity in the middle of the span, of the tables where they have it. */
export const fluids = kind(
  'fluid',
  {
    fluid: z.string(),
    word: z.string(),
    minC: z.number(),
    maxC: z.number(),
    densityKgPerM3: z.number().positive().optional(),
    heatCapacityJPerKgK: z.number().positive().optional(),
  },
  (row) => {
    const [minTemperatureK, maxTemperatureK] = [kelvin(row.minC), kelvin(row.maxC)];
    const tabled = evaluate(heatTransferFluid, {
      fluid: row.fluid,
      temperatureK: (minTemperatureK + maxTemperatureK) / 2,
    });
    const figures = tabled.ok ? tabled.value : row;
    const { densityKgPerM3 = 0, heatCapacityJPerKgK = 0 } = figures;
    const density = Math.round(densityKgPerM3);
    return {
      name: `${row.word}, ${degrees(row.minC)} to ${degrees(row.maxC)} °C`,
      massKg: density * drumM3,
      attributes: {
        fluid: row.fluid,
        minTemperatureK,
        maxTemperatureK,
        densityKgPerM3: density,
        heatCapacityJPerKgK: Math.round(heatCapacityJPerKgK),
      },
    };
  },
);
