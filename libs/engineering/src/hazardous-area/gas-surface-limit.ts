import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { fromMemory, published } from '../source-reference.js';
import { type GasZone, gasZones } from './zones.js';

interface SurfaceQuery {
  readonly autoignitionTemperatureK: number;
  readonly zone: GasZone;
  readonly gasReachesSurfaceTemperature?: boolean | undefined;
}

/** Highest temperature of a surface in a gas zone [K]: 80 % of the autoignition temperature in °C where that is asked. */
export const gasSurfaceLimitK = ({
  autoignitionTemperatureK,
  zone,
  gasReachesSurfaceTemperature,
}: SurfaceQuery): number => {
  const reduced = zone === '0' || (zone === '1' && gasReachesSurfaceTemperature === true);
  return reduced ? 0.8 * (autoignitionTemperatureK - 273.15) + 273.15 : autoignitionTemperatureK;
};

/**
 * Highest temperature of a surface in an explosive gas atmosphere: hot walls, jackets and pipes included.
 *
 *   zone 0: 0.8 T_ai [°C], also in rare malfunctions
 *   zone 1: T_ai, in normal operation and expected malfunctions; 0.8 T_ai [°C] where the gas takes on the temperature
 *   zone 2: T_ai, in normal operation
 *
 * @param autoignitionTemperatureK T_ai [K]
 * @param zone 0, 1 or 2
 * @param gasReachesSurfaceTemperature the gas itself can be heated to the temperature of the surface
 * @returns temperatureK highest surface temperature [K]
 * @range T_ai above 0 °C, air at 1 bar
 * @error CALC_OUT_OF_RANGE
 * @source trgs-723 §5.2.3 (zone 0; percentage taken in °C); en-1127-1 §6.4.2 (zones 1 and 2)
 */
export const gasSurfaceLimit = calculation({
  id: 'hazardousArea.gasSurfaceLimit',
  title: 'Highest surface temperature in a gas zone',
  inputs: z.strictObject({
    autoignitionTemperatureK: quantity(
      { unit: 'K', symbol: 'T_ai', description: 'Autoignition temperature in air at 1 bar' },
      z.number().min(273.15).max(2000),
    ),
    zone: z.enum(gasZones).meta({ description: 'Zone of the gas atmosphere' }),
    gasReachesSurfaceTemperature: z
      .boolean()
      .optional()
      .meta({ description: 'The gas can be heated to the temperature of the surface (zone 1)' }),
  }),
  outputs: z.strictObject({
    temperatureK: quantity({ unit: 'K', symbol: 'T_max', description: 'Highest surface temperature' }),
  }),
  formula: String.raw`T_{\max} = 0.8\,T_{ai}\ [^\circ\text{C}]\ (\text{zone } 0)`,
  range: 'autoignition temperature above 0 °C; air at 1 bar',
  source: [published('trgs-723 §5.2.3'), fromMemory('en-1127-1 §6.4.2, zones 1 and 2')],
  compute: (inputs, log) => {
    const temperatureK = gasSurfaceLimitK(inputs);
    const { autoignitionTemperatureK, zone } = inputs;
    const reduced = temperatureK < autoignitionTemperatureK;
    log?.(
      formulaStep({
        symbol: 'T_max',
        formula: reduced ? '0.8 · (T_ai − 273.15) + 273.15' : 'T_ai',
        where: { T_ai: autoignitionTemperatureK },
        value: temperatureK,
        unit: 'K',
        note: `zone ${zone}; autoignition in air at 1 bar`,
      }),
    );
    return succeed({ temperatureK });
  },
});
