import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { published } from '../source-reference.js';

const ignition = (symbol: string, description: string) =>
  quantity({ unit: 'K', symbol, description }, z.number().min(273.15).max(2000));

/**
 * Highest temperature of a surface in a dust atmosphere.
 *
 *   T_max = min(2/3 T_cloud [°C]; T_layer − 75 K)
 *
 * @param cloudIgnitionTemperatureK T_cloud of the dust cloud [K]
 * @param layerIgnitionTemperatureK T_layer of a layer of 5 mm [K]
 * @returns temperatureK T_max [K]
 * @range both above 0 °C; layers up to 5 mm
 * @error CALC_OUT_OF_RANGE
 * @source iec-60079-14 (dust)
 */
export const dustSurfaceLimit = calculation({
  id: 'hazardousArea.dustSurfaceLimit',
  title: 'Highest surface temperature in a dust zone',
  inputs: z.strictObject({
    cloudIgnitionTemperatureK: ignition('T_cloud', 'Ignition temperature of the dust cloud'),
    layerIgnitionTemperatureK: ignition('T_layer', 'Ignition temperature of a dust layer of 5 mm'),
  }),
  outputs: z.strictObject({
    temperatureK: quantity({ unit: 'K', symbol: 'T_max', description: 'Highest surface temperature' }),
    governs: z.enum(['cloud', 'layer']).meta({ description: 'Which of the two sets the limit' }),
  }),
  formula: String.raw`T_{\max} = \min\left(\tfrac{2}{3} T_\text{cloud}\,[^\circ\text{C}],\ T_\text{layer} - 75\,\text{K}\right)`,
  range: 'dust layers up to 5 mm',
  source: [published('iec-60079-14, dust')],
  compute: ({ cloudIgnitionTemperatureK, layerIgnitionTemperatureK }, log) => {
    const byCloud = ((cloudIgnitionTemperatureK - 273.15) * 2) / 3 + 273.15;
    const byLayer = layerIgnitionTemperatureK - 75;
    const temperatureK = Math.min(byCloud, byLayer);
    const governs: 'cloud' | 'layer' = byCloud <= byLayer ? 'cloud' : 'layer';
    log?.(
      formulaStep({
        symbol: 'T_max',
        formula: 'min(2 / 3 · (T_cloud − 273.15) + 273.15; T_layer − 75)',
        where: { T_cloud: cloudIgnitionTemperatureK, T_layer: layerIgnitionTemperatureK },
        value: temperatureK,
        unit: 'K',
      }),
    );
    return succeed({ temperatureK, governs });
  },
});
