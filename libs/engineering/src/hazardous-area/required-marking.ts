import { z } from 'zod';
import { type Basis, fail, type Outcome, succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { basisSchema, weakestBasis } from '../materials/basis.js';
import { findSubstanceHazards } from '../ped/substance-hazards.js';
import { fromMemory, published } from '../source-reference.js';
import { gasSurfaceLimitK } from './gas-surface-limit.js';
import {
  findIgnitionData,
  type GasGroup,
  gasGroupField,
  gasGroups,
  type IgnitionData,
} from './ignition-data.js';
import {
  surfaceLimitOfClassK,
  type TemperatureClass,
  temperatureClassField,
  temperatureClassOf,
} from './temperature-class.js';
import { equipmentOfZone, type GasZone, gasZones, zoneEquipmentFields } from './zones.js';

/** What equipment in a gas zone must be marked with at least. */
export interface RequiredMarking {
  readonly category: string;
  readonly protectionLevel: string;
  readonly gasGroup: GasGroup;
  readonly temperatureClass: TemperatureClass;
  /** Substance with the lowest autoignition temperature. */
  readonly limitingSubstance: string;
  /** Substance that asks for the gas group. */
  readonly gasGroupSubstance: string;
  readonly autoignitionTemperatureK: number;
  /** Autoignition temperature less the surface limit of the class [K]. */
  readonly classMarginK: number;
  /** Highest temperature of any other surface in the zone [K]. */
  readonly surfaceLimitK: number;
  readonly basis: Basis;
}

/** Whether equipment of a gas group may be used in a gas of another: IIC covers IIB covers IIA. */
export const gasGroupCovers = (marked: GasGroup, required: GasGroup): boolean =>
  gasGroups.indexOf(marked) >= gasGroups.indexOf(required);

/** Known not to burn: no flammable class and no flash point. Then no ignition data are asked for. */
const cannotIgnite = (substance: string): boolean => {
  const hazards = findSubstanceHazards(substance);
  return (
    hazards.ok &&
    hazards.value.flashPointC === undefined &&
    !hazards.value.hazardStatements.some((statement) => /^H22[0-6]/.test(statement))
  );
};

const flammable = (substances: readonly string[]): Outcome<readonly IgnitionData[]> => {
  const found: IgnitionData[] = [];
  for (const substance of substances) {
    const data = findIgnitionData(substance);
    if (data.ok) found.push(data.value);
    else if (!cannotIgnite(substance)) return data;
  }
  return succeed(found);
};

/**
 * Marking for a gas zone and all substances that can be in it: the worst gas group and the lowest autoignition
 * temperature decide, each on its own. Substances known not to burn are passed over.
 *
 * @error CALC_UNKNOWN_SUBSTANCE for a substance that may burn and has no data; CALC_MISSING_PROPERTY where none burns
 */
export const requiredMarkingFor = (
  zone: GasZone,
  substances: readonly string[],
): Outcome<RequiredMarking> => {
  const data = flammable(substances);
  if (!data.ok) return data;
  const [first, ...rest] = data.value;
  if (first === undefined) {
    return fail({
      code: 'CALC_MISSING_PROPERTY',
      message: `substances: ${substances.join(', ')} given; none of them forms an explosive gas atmosphere. Name the substance that makes the zone`,
      field: 'substances',
    });
  }
  const hottest = rest.reduce(
    (worst, row) => (row.autoignitionTemperatureC < worst.autoignitionTemperatureC ? row : worst),
    first,
  );
  const group = rest.reduce(
    (worst, row) => (gasGroupCovers(worst.gasGroup, row.gasGroup) ? worst : row),
    first,
  );
  const autoignitionTemperatureK = hottest.autoignitionTemperatureC + 273.15;
  const temperatureClass = temperatureClassOf(autoignitionTemperatureK);
  if (!temperatureClass.ok) return temperatureClass;
  return succeed({
    ...equipmentOfZone(zone),
    gasGroup: group.gasGroup,
    temperatureClass: temperatureClass.value,
    limitingSubstance: hottest.name,
    gasGroupSubstance: group.name,
    autoignitionTemperatureK,
    classMarginK: autoignitionTemperatureK - surfaceLimitOfClassK(temperatureClass.value),
    surfaceLimitK: gasSurfaceLimitK({ autoignitionTemperatureK, zone }),
    basis: weakestBasis(data.value.flatMap((row) => [row.basis, row.gasGroupBasis])),
  });
};

/**
 * Marking that equipment in a gas zone needs for all substances of the process.
 *
 *   category from the zone; gas group = worst of all; class from the lowest T_ai of all
 *
 * @param zone       0, 1 or 2
 * @param substances common names or CAS numbers of everything that can be in the zone
 * @returns category, protectionLevel, gasGroup, temperatureClass, the substances that decide, and the margins
 * @range air at 1 bar; higher pressure and oxygen lower the autoignition temperature and need tests
 * @error CALC_UNKNOWN_SUBSTANCE, CALC_MISSING_PROPERTY
 * @source 1999/92/EC annex II B; iec-60079-20-1:2010; iec-60079-14
 */
export const requiredMarking = calculation({
  id: 'hazardousArea.requiredMarking',
  title: 'Marking for a gas zone and its substances',
  inputs: z.strictObject({
    zone: z.enum(gasZones).meta({ description: 'Zone of the gas atmosphere' }),
    substances: z.array(z.string().min(1)).min(1).meta({ description: 'Common names or CAS numbers' }),
  }),
  outputs: z.strictObject({
    ...zoneEquipmentFields,
    gasGroup: gasGroupField,
    temperatureClass: temperatureClassField,
    limitingSubstance: z.string().meta({ description: 'Substance that sets the temperature class' }),
    gasGroupSubstance: z.string().meta({ description: 'Substance that sets the gas group' }),
    autoignitionTemperatureK: quantity({
      unit: 'K',
      symbol: 'T_ai',
      description: 'Lowest autoignition temperature in air at 1 bar',
    }),
    classMarginK: quantity({
      unit: 'K',
      symbol: 'ΔT',
      description: 'T_ai less the surface limit of the class',
    }),
    surfaceLimitK: quantity({
      unit: 'K',
      symbol: 'T_max',
      description: 'Highest temperature of any other surface',
    }),
    basis: basisSchema.meta({ description: 'What the rows are worth' }),
  }),
  formula: String.raw`\text{group} = \max_i \text{group}_i,\quad \text{class} = \text{class}(\min_i T_{ai,i})`,
  range: 'air at 1 bar; substances on file',
  source: [
    published('1999/92/EC annex II B'),
    published('iec-60079-20-1:2010'),
    fromMemory('iec-60079-14, a higher gas group covers the lower ones'),
  ],
  compute: ({ zone, substances }, log) => {
    const marking = requiredMarkingFor(zone, substances);
    if (!marking.ok) return marking;
    const { category, gasGroup, temperatureClass, limitingSubstance, gasGroupSubstance } = marking.value;
    log?.({
      symbol: 'marking',
      formula: 'worst gas group, lowest autoignition temperature',
      substituted: `group by ${gasGroupSubstance}, class by ${limitingSubstance}`,
      value: `II ${category} ${gasGroup} ${temperatureClass}`,
      unit: '1',
      note: 'autoignition in air at 1 bar; it falls with pressure and oxygen',
    });
    return succeed(marking.value);
  },
});
