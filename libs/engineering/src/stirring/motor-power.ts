import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { commonPractice } from '../source-reference.js';
import { shown } from '../shown.js';

/**
 * Power that the motor must give.
 *
 *   P_M = s (P + P_loss) / η
 *
 * @param shaftPowerW    P: upper end of the stirring power [W]
 * @param lossPowerW     P_loss: eddy currents of the can, seal, bearings [W], 0 where not given
 * @param driveEfficiency η from motor shaft to coupling [-]
 * @param serviceFactor  s [-], 1 where not given
 * @returns motorPowerW P_M [W]
 * @range 0 < η ≤ 1, 1 ≤ s ≤ 5
 * @error CALC_OUT_OF_RANGE outside the range
 * @source drive-practice (power balance; service factor is common practice)
 */
export const motorPower = calculation({
  id: 'stirring.motorPower',
  title: 'Motor power',
  inputs: z.strictObject({
    shaftPowerW: quantity(
      { unit: 'W', symbol: 'P', description: 'Upper end of the stirring power' },
      z.number().min(0),
    ),
    lossPowerW: quantity(
      {
        unit: 'W',
        symbol: 'P_loss',
        description: 'Losses of can, seal and bearings; 0 where nothing is given',
      },
      z.number().min(0),
    ).optional(),
    driveEfficiency: quantity(
      { unit: '1', symbol: 'η', description: 'Efficiency from motor shaft to coupling' },
      z.number().positive().max(1),
    ),
    serviceFactor: quantity(
      { unit: '1', symbol: 's', description: 'Service factor; 1 where nothing is given' },
      z.number().min(1).max(5),
    ).optional(),
  }),
  outputs: z.strictObject({
    motorPowerW: quantity({ unit: 'W', symbol: 'P_M', description: 'Power at the motor shaft' }),
  }),
  formula: String.raw`P_M = \frac{s\,(P + P_{loss})}{\eta}`,
  range: 'P ≥ 0, 0 < η ≤ 1, 1 ≤ s ≤ 5',
  source: [commonPractice('drive-practice power balance with service factor')],
  compute: ({ shaftPowerW, lossPowerW = 0, driveEfficiency, serviceFactor = 1 }, log) => {
    const motorPowerW = (serviceFactor * (shaftPowerW + lossPowerW)) / driveEfficiency;
    log?.({
      symbol: 'P_M',
      formula: 's (P + P_loss) / η',
      substituted: `${shown(serviceFactor)} × (${shown(shaftPowerW)} + ${shown(lossPowerW)}) / ${shown(driveEfficiency)}`,
      value: motorPowerW,
      unit: 'W',
    });
    return succeed({ motorPowerW });
  },
});
