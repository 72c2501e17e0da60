import { z } from 'zod';
import { fail, succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { relabelled } from '../relabelled.js';
import { shown } from '../shown.js';
import { published } from '../source-reference.js';
import { absolutePressureField, gasField, gasTemperatureField } from './gas-fields.js';
import { gasState } from './gas-state.js';

/** More refills than this are not dosing any more. */
const maxRefills = 1_000_000;

/**
 * Reservoir for a gas uptake measured by pressure drop: volume for one filling, or refills of a given reservoir.
 *
 *   n = V (ρ1 − ρ2),  V = n_uptake/(ρ1 − ρ2),  refills = ⌈n_uptake/n⌉ − 1
 *
 * @param gas                CAS number or common name
 * @param uptakeMol          n_uptake, of the whole batch [mol]
 * @param startPressurePaAbs p1, reservoir filled [Pa]
 * @param endPressurePaAbs   p2, lowest: above the reactor by what the regulator needs [Pa]
 * @param temperatureK       T of the reservoir [K]
 * @param reservoirVolumeM3  V of a given reservoir, optional [m³]
 * @returns volumeForOneFillingM3 [m³]; with a reservoir amountPerFillingMol [mol], fillings and refills [-]
 * @range as gas.compressibilityFactor, p2 < p1, isothermal end states
 * @error CALC_UNKNOWN_SUBSTANCE, CALC_MISSING_PROPERTY, CALC_OUT_OF_RANGE, CALC_NOT_CONVERGED
 * @source real-gas law
 */
export const uptakeReservoir = calculation({
  id: 'gas.uptakeReservoir',
  title: 'Reservoir volume and refills for a gas uptake',
  inputs: z.strictObject({
    gas: gasField,
    uptakeMol: quantity(
      { unit: 'mol', symbol: 'n_u', description: 'Gas uptake of the batch' },
      z.number().positive(),
    ),
    startPressurePaAbs: absolutePressureField('p1', 'Absolute pressure of the filled reservoir'),
    endPressurePaAbs: absolutePressureField('p2', 'Lowest absolute pressure of the reservoir'),
    temperatureK: gasTemperatureField,
    reservoirVolumeM3: quantity(
      { unit: 'm3', symbol: 'V', description: 'Volume of a given reservoir' },
      z.number().positive(),
    ).optional(),
  }),
  outputs: z.strictObject({
    volumeForOneFillingM3: quantity({
      unit: 'm3',
      symbol: 'V_1',
      description: 'Reservoir volume that gives the uptake in one filling',
    }),
    amountPerFillingMol: quantity({ unit: 'mol', symbol: 'n', description: 'Gas per filling' }).optional(),
    fillings: quantity({ unit: '1', symbol: 'k', description: 'Fillings of the given reservoir' }).optional(),
    refills: quantity({
      unit: '1',
      symbol: 'k − 1',
      description: 'Refills after the first filling',
    }).optional(),
    relativeUncertainty: quantity({
      unit: '1',
      symbol: 'u',
      description: 'Half width of the expected band of the gas density, relative',
    }),
  }),
  formula: String.raw`V = \frac{n_u}{\rho(p_1) - \rho(p_2)}`,
  range: 'as gas.compressibilityFactor, p2 < p1, isothermal end states',
  source: [published('real-gas law with the reference equation of state of the gas')],
  compute: (inputs, log) => {
    const { gas, uptakeMol, startPressurePaAbs, endPressurePaAbs, temperatureK, reservoirVolumeM3 } = inputs;
    if (endPressurePaAbs >= startPressurePaAbs) {
      return outOfRange({
        field: 'endPressurePaAbs',
        given: endPressurePaAbs,
        unit: 'Pa',
        allowed: `less than startPressurePaAbs (${shown(startPressurePaAbs)} Pa)`,
      });
    }
    const start = gasState(gas, { pressurePaAbs: startPressurePaAbs, temperatureK });
    if (!start.ok) return relabelled(start.error, { pressurePaAbs: 'startPressurePaAbs' });
    const end = gasState(gas, { pressurePaAbs: endPressurePaAbs, temperatureK });
    if (!end.ok) return relabelled(end.error, { pressurePaAbs: 'endPressurePaAbs' });
    const drop = start.value.molarDensityMolPerM3 - end.value.molarDensityMolPerM3;
    const volumeForOneFillingM3 = uptakeMol / drop;
    const { relativeUncertainty } = start.value;
    log?.({
      symbol: 'V_1',
      formula: 'n_u / (ρ1 − ρ2)',
      substituted: `${shown(uptakeMol)} / (${shown(start.value.molarDensityMolPerM3)} − ${shown(end.value.molarDensityMolPerM3)})`,
      value: volumeForOneFillingM3,
      unit: 'm3',
      note: `${start.value.name}: ${start.value.equation}`,
    });
    if (reservoirVolumeM3 === undefined) return succeed({ volumeForOneFillingM3, relativeUncertainty });
    const amountPerFillingMol = reservoirVolumeM3 * drop;
    const fillings = Math.ceil(Number((uptakeMol / amountPerFillingMol).toPrecision(12)));
    if (fillings > maxRefills) {
      return fail({
        code: 'CALC_OUT_OF_RANGE',
        message: `reservoirVolumeM3: ${shown(reservoirVolumeM3)} m3 given; it would have to be filled ${shown(fillings)} times. Take a larger reservoir or a mass-flow controller`,
        field: 'reservoirVolumeM3',
        given: reservoirVolumeM3,
        allowed: `at least ${shown(volumeForOneFillingM3 / maxRefills)} m3`,
      });
    }
    log?.({
      symbol: 'k',
      formula: '⌈n_u / (V (ρ1 − ρ2))⌉',
      substituted: `⌈${shown(uptakeMol)} / ${shown(amountPerFillingMol)}⌉`,
      value: fillings,
      unit: '1',
    });
    return succeed({
      volumeForOneFillingM3,
      amountPerFillingMol,
      fillings,
      refills: fillings - 1,
      relativeUncertainty,
    });
  },
});
