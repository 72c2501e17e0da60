import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { shown } from '../shown.js';
import { published } from '../source-reference.js';
import { heatFields } from './heat-fields.js';

/**
 * Heater power to bring liquid and vessel up within a time.
 *
 *   P = (m_l c_l + m_v c_v) ΔT/t + Q_loss
 *
 * @param liquidMassKg              m_l [kg]
 * @param liquidHeatCapacityJPerKgK c_l [J/(kg·K)]
 * @param vesselMassKg              m_v [kg]
 * @param vesselHeatCapacityJPerKgK c_v [J/(kg·K)]
 * @param temperatureRiseK          ΔT [K]
 * @param timeS                     t [s]
 * @param meanLossW                 Q_loss, mean over the heating [W]
 * @returns powerW P [W]
 * @range vessel at the temperature of the liquid, heater in full contact
 * @source energy balance
 */
export const heaterPower = calculation({
  id: 'heat.heaterPower',
  title: 'Heater power for a heating time',
  inputs: z.strictObject({
    liquidMassKg: heatFields.positive('kg', 'm_l', 'Mass of the liquid'),
    liquidHeatCapacityJPerKgK: heatFields.positive('J/(kg.K)', 'c_l', 'Heat capacity of the liquid'),
    vesselMassKg: quantity(
      { unit: 'kg', symbol: 'm_v', description: 'Mass of the vessel that is heated with it' },
      z.number().min(0),
    ),
    vesselHeatCapacityJPerKgK: heatFields.positive('J/(kg.K)', 'c_v', 'Heat capacity of the vessel'),
    temperatureRiseK: heatFields.positive('K', 'ΔT', 'Temperature rise'),
    timeS: heatFields.positive('s', 't', 'Heating time'),
    meanLossW: quantity(
      { unit: 'W', symbol: 'Q_loss', description: 'Mean heat loss while heating' },
      z.number().min(0),
    ),
  }),
  outputs: z.strictObject({ powerW: quantity({ unit: 'W', symbol: 'P', description: 'Heater power' }) }),
  formula: String.raw`P = \frac{(m_l c_l + m_v c_v)\,\Delta T}{t} + \dot Q_\mathrm{loss}`,
  range: 'vessel at the temperature of the liquid',
  source: [published('energy balance')],
  compute: (inputs, log) => {
    const capacity =
      inputs.liquidMassKg * inputs.liquidHeatCapacityJPerKgK +
      inputs.vesselMassKg * inputs.vesselHeatCapacityJPerKgK;
    const powerW = (capacity * inputs.temperatureRiseK) / inputs.timeS + inputs.meanLossW;
    log?.({
      symbol: 'P',
      formula: '(m_l c_l + m_v c_v) ΔT/t + Q_loss',
      substituted: `(${shown(inputs.liquidMassKg)} × ${shown(inputs.liquidHeatCapacityJPerKgK)} + ${shown(inputs.vesselMassKg)} × ${shown(inputs.vesselHeatCapacityJPerKgK)}) × ${shown(inputs.temperatureRiseK)} / ${shown(inputs.timeS)} + ${shown(inputs.meanLossW)}`,
      value: powerW,
      unit: 'W',
    });
    return succeed({ powerW });
  },
});
