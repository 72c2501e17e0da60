import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { shown } from '../shown.js';
import { published } from '../source-reference.js';
import { heatFields } from './heat-fields.js';

/**
 * Adiabatic temperature rise of a batch reaction. Negative where heat is taken up.
 *
 *   ΔT_ad = c0 (−ΔH) / (ρ c_p)
 *
 * @param concentrationMolPerM3   c0 of the limiting reactant [mol/m³]
 * @param reactionEnthalpyJPerMol ΔH, negative where heat is set free [J/mol]
 * @param densityKgPerM3          ρ [kg/m³]
 * @param heatCapacityJPerKgK     c_p [J/(kg·K)]
 * @returns temperatureRiseK ΔT_ad [K]
 * @range full conversion, constant properties, heat of the vessel neglected (which is on the safe side)
 * @source definition (stoessel-2008 ch. 3)
 */
export const adiabaticRise = calculation({
  id: 'heat.adiabaticRise',
  title: 'Adiabatic temperature rise',
  inputs: z.strictObject({
    concentrationMolPerM3: quantity(
      { unit: 'mol/m3', symbol: 'c0', description: 'Concentration of the limiting reactant' },
      z.number().min(0),
    ),
    reactionEnthalpyJPerMol: quantity({
      unit: 'J/mol',
      symbol: 'ΔH',
      description: 'Reaction enthalpy, negative where heat is set free',
    }),
    densityKgPerM3: heatFields.positive('kg/m3', 'ρ', 'Density of the batch'),
    heatCapacityJPerKgK: heatFields.heatCapacityJPerKgK,
  }),
  outputs: z.strictObject({
    temperatureRiseK: quantity({ unit: 'K', symbol: 'ΔT_ad', description: 'Adiabatic temperature rise' }),
  }),
  formula: String.raw`\Delta T_\mathrm{ad} = \frac{c_0\,(-\Delta H)}{\rho\,c_p}`,
  range: 'full conversion, constant properties, heat of the vessel neglected',
  source: [published('stoessel-2008 ch. 3')],
  compute: ({ concentrationMolPerM3, reactionEnthalpyJPerMol, densityKgPerM3, heatCapacityJPerKgK }, log) => {
    const temperatureRiseK =
      (concentrationMolPerM3 * -reactionEnthalpyJPerMol) / (densityKgPerM3 * heatCapacityJPerKgK);
    log?.({
      symbol: 'ΔT_ad',
      formula: 'c0 (−ΔH) / (ρ c_p)',
      substituted: `${shown(concentrationMolPerM3)} × ${shown(-reactionEnthalpyJPerMol)} / (${shown(densityKgPerM3)} × ${shown(heatCapacityJPerKgK)})`,
      value: temperatureRiseK,
      unit: 'K',
      note: 'a screening figure: it does not replace calorimetry',
    });
    return succeed({ temperatureRiseK });
  },
});
