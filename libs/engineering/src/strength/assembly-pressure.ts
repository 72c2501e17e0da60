import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { shown } from '../shown.js';
import { published } from '../source-reference.js';
import { permissiblePressureField } from './pressure-fields.js';

const temperatureLimit = (symbol: string, description: string) =>
  quantity({ unit: 'K', symbol, description }, z.number().positive());

const part = z.strictObject({
  name: z.string().min(1).meta({ description: 'What the part is' }),
  maxPressurePaGauge: quantity(
    {
      unit: 'Pa',
      symbol: 'PS_i',
      description: 'Its maximum allowable pressure at the common temperature (gauge)',
    },
    z.number().min(0),
  ),
  minTemperatureK: temperatureLimit('TS_min_i', 'Its lowest allowable temperature').optional(),
  maxTemperatureK: temperatureLimit('TS_max_i', 'Its highest allowable temperature').optional(),
});

type Part = z.output<typeof part>;

const lowest = (parts: readonly Part[], of: (item: Part) => number): Part | undefined =>
  parts.reduce<Part | undefined>(
    (least, item) => (least === undefined || of(item) < of(least) ? item : least),
    undefined,
  );

/**
 * PS and TS of an assembly under one pressure: the least of its parts. A part with a pressure of its own (the
 * jacket) is another assembly.
 *
 *   PS = min PS_i,  TS_max = min TS_max,i,  TS_min = max TS_min,i
 *
 * @param parts name, PS [Pa] and limits of temperature [K] of each
 * @returns maxPressurePaGauge, limitingPart; maxTemperatureK, minTemperatureK with their parts where given;
 *   reserveOfNext 1 − PS/PS_2 to the second weakest
 * @range parts under one common pressure; the lowest temperature below the highest
 * @error CALC_OUT_OF_RANGE where no temperature suits all parts
 * @source 2014/68/EU annex I 2.3, 2.9 (integration of parts)
 */
export const assemblyPressure = calculation({
  id: 'strength.assemblyPressure',
  title: 'Permissible pressure and temperature of an assembly',
  inputs: z.strictObject({ parts: z.array(part).min(1).max(1000) }),
  outputs: z.strictObject({
    maxPressurePaGauge: permissiblePressureField,
    limitingPart: z.string().meta({ description: 'The part with the least pressure' }),
    reserveOfNext: quantity({
      unit: '1',
      symbol: 'r',
      description: 'Share by which the weakest part lies below the second weakest',
    }).optional(),
    maxTemperatureK: quantity({
      unit: 'K',
      symbol: 'TS_max',
      description: 'Highest temperature of all',
    }).optional(),
    hottestLimitedBy: z.string().optional().meta({ description: 'The part that sets the highest' }),
    minTemperatureK: quantity({
      unit: 'K',
      symbol: 'TS_min',
      description: 'Lowest temperature of all',
    }).optional(),
    coldestLimitedBy: z.string().optional().meta({ description: 'The part that sets the lowest' }),
  }),
  formula: String.raw`PS = \min_i PS_i,\quad TS_\mathrm{max} = \min_i TS_{\mathrm{max},i}`,
  range: 'parts under one common pressure, each rated at the common temperature',
  source: [published('2014/68/EU annex I 2.3 and 2.9')],
  compute: ({ parts }, log) => {
    const weakest = lowest(parts, ({ maxPressurePaGauge }) => maxPressurePaGauge);
    const hot = lowest(parts, ({ maxTemperatureK }) => maxTemperatureK ?? Infinity);
    const cold = lowest(parts, ({ minTemperatureK }) => -(minTemperatureK ?? 0));
    const { maxPressurePaGauge = 0, name = '' } = weakest ?? {};
    const next = lowest(
      parts.filter((item) => item !== weakest),
      (item) => item.maxPressurePaGauge,
    );
    const [highest, least] = [hot?.maxTemperatureK, cold?.minTemperatureK];
    if (highest !== undefined && least !== undefined && least > highest) {
      return {
        ok: false,
        error: {
          code: 'CALC_OUT_OF_RANGE',
          message: `parts: ${cold?.name ?? ''} needs at least ${shown(least)} K, ${hot?.name ?? ''} carries at most ${shown(highest)} K; choose parts whose temperatures overlap`,
          field: 'parts',
          allowed: 'parts whose temperatures overlap',
        },
      };
    }
    log?.({
      symbol: 'PS',
      formula: 'min PS_i',
      substituted: parts.map((item) => `${item.name} ${shown(item.maxPressurePaGauge)}`).join(', '),
      value: maxPressurePaGauge,
      unit: 'Pa',
      note: `limited by ${name}`,
    });
    return succeed({
      maxPressurePaGauge,
      limitingPart: name,
      ...(next === undefined || next.maxPressurePaGauge === 0
        ? {}
        : { reserveOfNext: 1 - maxPressurePaGauge / next.maxPressurePaGauge }),
      ...(highest === undefined ? {} : { maxTemperatureK: highest, hottestLimitedBy: hot?.name }),
      ...(least === undefined ? {} : { minTemperatureK: least, coldestLimitedBy: cold?.name }),
    });
  },
});
