import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { published } from '../source-reference.js';
import { heatFields } from './heat-fields.js';

/**
 * Highest gas uptake that heat removal allows.
 *
 *   n = (Q − P_s) / (−ΔH)
 *
 * @param removableW              Q, by heat.removableHeat [W]
 * @param stirrerPowerW           P_s that the stirrer brings in, default 0 [W]
 * @param reactionEnthalpyJPerMol ΔH per mole of gas taken up, negative [J/mol]
 * @returns uptakeMolPerS [mol/s], uptakeMolPerMin [mol/min]
 * @range ΔH < 0, Q > P_s, batch at constant temperature
 * @error CALC_OUT_OF_RANGE
 * @source energy balance (stoessel-2008 ch. 5)
 */
export const gasUptakeLimit = calculation({
  id: 'heat.gasUptakeLimit',
  title: 'Gas uptake that heat removal allows',
  inputs: z.strictObject({
    removableW: heatFields.positive('W', 'Q', 'Heat that can be removed'),
    stirrerPowerW: quantity(
      { unit: 'W', symbol: 'P_s', description: 'Power that the stirrer brings in' },
      z.number().min(0),
    ).default(0),
    reactionEnthalpyJPerMol: quantity({
      unit: 'J/mol',
      symbol: 'ΔH',
      description: 'Reaction enthalpy per mole of gas, negative where heat is set free',
    }),
  }),
  outputs: z.strictObject({
    uptakeMolPerS: quantity({ unit: 'mol/s', symbol: 'n', description: 'Highest gas uptake' }),
    uptakeMolPerMin: quantity({ unit: 'mol/min', symbol: 'n_min', description: 'The same a minute' }),
  }),
  formula: String.raw`\dot n = \frac{\dot Q - P_s}{-\Delta H}`,
  range: 'ΔH < 0, Q > P_s, batch at constant temperature',
  source: [published('stoessel-2008 ch. 5')],
  compute: ({ removableW, stirrerPowerW, reactionEnthalpyJPerMol }, log) => {
    if (reactionEnthalpyJPerMol >= 0) {
      return outOfRange({
        field: 'reactionEnthalpyJPerMol',
        given: reactionEnthalpyJPerMol,
        unit: 'J/mol',
        allowed: 'less than 0: a reaction that sets no heat free is not limited by heat removal',
      });
    }
    if (removableW <= stirrerPowerW) {
      return outOfRange({
        field: 'removableW',
        given: removableW,
        unit: 'W',
        allowed: `more than stirrerPowerW (${shown(stirrerPowerW)} W)`,
      });
    }
    const uptakeMolPerS = (removableW - stirrerPowerW) / -reactionEnthalpyJPerMol;
    log?.({
      symbol: 'n',
      formula: '(Q − P_s) / (−ΔH)',
      substituted: `(${shown(removableW)} − ${shown(stirrerPowerW)}) / ${shown(-reactionEnthalpyJPerMol)}`,
      value: uptakeMolPerS,
      unit: 'mol/s',
      note: 'the gas must stop where cooling or stirring fails: what is dissolved and unreacted still reacts',
    });
    return succeed({ uptakeMolPerS, uptakeMolPerMin: 60 * uptakeMolPerS });
  },
});
