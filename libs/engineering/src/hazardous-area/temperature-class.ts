import { z } from 'zod';
import { type Outcome, succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { published } from '../source-reference.js';

/** From the widest to the strictest. */
export const temperatureClasses = ['T1', 'T2', 'T3', 'T4', 'T5', 'T6'] as const;
export type TemperatureClass = (typeof temperatureClasses)[number];

export const temperatureClassField = z
  .enum(temperatureClasses)
  .meta({ description: 'Temperature class that equipment must have' });

/** Highest surface temperature of equipment of each class [°C]. */
const surfaceLimitC: Readonly<Record<TemperatureClass, number>> = {
  T1: 450,
  T2: 300,
  T3: 200,
  T4: 135,
  T5: 100,
  T6: 85,
};

/** Highest surface temperature that a class allows [K]. */
export const surfaceLimitOfClassK = (temperatureClass: TemperatureClass): number =>
  surfaceLimitC[temperatureClass] + 273.15;

/** Whether equipment marked with a class may be used where another is asked. */
export const temperatureClassCovers = (marked: TemperatureClass, required: TemperatureClass): boolean =>
  temperatureClasses.indexOf(marked) >= temperatureClasses.indexOf(required);

/**
 * The widest class whose surface limit stays below an autoignition temperature.
 * @error CALC_OUT_OF_RANGE at 85 °C and below, where no class protects
 */
export const temperatureClassOf = (autoignitionTemperatureK: number): Outcome<TemperatureClass> => {
  // Compared on a grid of a millikelvin, so that 723.15 K is 450 °C.
  const autoignitionC = Math.round((autoignitionTemperatureK - 273.15) * 1000) / 1000;
  const found = temperatureClasses.find((candidate) => surfaceLimitC[candidate] < autoignitionC);
  if (found !== undefined) return succeed(found);
  return outOfRange({
    field: 'autoignitionTemperatureK',
    given: autoignitionTemperatureK,
    unit: 'K',
    allowed: 'above 358.15 K (85 °C), the limit of T6; below it surfaces need a limit of their own',
  });
};

export const autoignitionField = quantity(
  {
    unit: 'K',
    symbol: 'T_ai',
    description: 'Autoignition temperature in air at 1 bar; it falls with pressure and oxygen',
  },
  z.number().min(200).max(2000),
);

/**
 * Temperature class for an autoignition temperature.
 *
 *   the widest class with T_surface,max < T_ai: T1 450, T2 300, T3 200, T4 135, T5 100, T6 85 °C
 *
 * @param autoignitionTemperatureK T_ai [K]
 * @returns temperatureClass T1 to T6, its surface limit and the margin to T_ai [K]
 * @range T_ai > 358.15 K
 * @error CALC_OUT_OF_RANGE outside the range
 * @source iec-60079-0 table of temperature classes
 */
export const temperatureClass = calculation({
  id: 'hazardousArea.temperatureClass',
  title: 'Temperature class for an autoignition temperature',
  inputs: z.strictObject({ autoignitionTemperatureK: autoignitionField }),
  outputs: z.strictObject({
    temperatureClass: temperatureClassField,
    surfaceLimitK: quantity({
      unit: 'K',
      symbol: 'T_max',
      description: 'Highest surface temperature of the class',
    }),
    marginK: quantity({
      unit: 'K',
      symbol: 'ΔT',
      description: 'Autoignition temperature less surface limit',
    }),
  }),
  formula: String.raw`\max\{T_i : T_{\max,i} < T_{ai}\}`,
  range: 'T_ai above 358.15 K; air at 1 bar',
  source: [published('iec-60079-0 temperature classes')],
  compute: ({ autoignitionTemperatureK }, log) => {
    const found = temperatureClassOf(autoignitionTemperatureK);
    if (!found.ok) return found;
    const surfaceLimitK = surfaceLimitOfClassK(found.value);
    log?.({
      symbol: 'class',
      formula: 'widest class whose surface limit is below T_ai',
      substituted: `${shown(surfaceLimitK)} K < ${shown(autoignitionTemperatureK)} K`,
      value: found.value,
      unit: '1',
      note: 'autoignition temperatures hold for air at 1 bar',
    });
    return succeed({
      temperatureClass: found.value,
      surfaceLimitK,
      marginK: autoignitionTemperatureK - surfaceLimitK,
    });
  },
});
