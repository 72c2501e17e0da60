import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';
import { fireScenario, heaterScenario } from './boiling-scenarios.js';
import { expansionScenario } from './expansion-scenario.js';
import { gasSupplyScenario } from './gas-supply-scenario.js';
import { deviceFields, gasSupplyFields, relievingTemperatureField } from './inflow-fields.js';
import { scenarioFields } from './scenario-fields.js';

const runawayStatement =
  'A runaway reaction is not covered. Where an exothermic reaction, a polymerisation or a self-reactive substance is possible, the relief can be sized only from calorimetric data (adiabatic rise, rates of temperature and pressure, vent-sizing test) by a qualified person.';

const scenario = z
  .enum(['gas supply', 'fire', 'heater runaway', 'thermal expansion', 'runaway reaction'])
  .meta({ description: 'Scenario that was not computed' });

const flow = (unit: string, symbol: string, description: string): z.ZodOptional<z.ZodNumber> =>
  quantity({ unit, symbol, description }).optional();

const inputs = z.strictObject({
  ...deviceFields,
  ...z.strictObject(gasSupplyFields).partial().shape,
  ...scenarioFields,
  relievingTemperatureK: relievingTemperatureField.optional(),
});

type Inputs = z.output<typeof inputs>;

const missingOf = (given: Inputs, fields: readonly (keyof Inputs)[]): readonly (keyof Inputs)[] =>
  fields.filter((field) => given[field] === undefined);

const supplyFields = Object.keys(gasSupplyFields) as (keyof typeof gasSupplyFields)[];

const isSupplyGiven = (
  given: Inputs,
): given is Inputs & { readonly [field in keyof typeof gasSupplyFields]: number } =>
  missingOf(given, supplyFields).length === 0;

/**
 * Worst inflow among gas supply failed open, fire, heater stuck at full power under a volatile liquid, and thermal
 * expansion of the liquid: each is computed where its
 * inputs are given, and listed with what is missing where they are not. A runaway reaction is never computed.
 *
 * @param relievingPressurePaAbs, backPressurePaAbs [Pa]; dischargeCoefficient [-], 0.62 where not given
 * @param gas supply: supply pressure, flow coefficient, x_T, gas
 * @param fire: wetted area, drainage, heat of vaporisation, vapour, relieving temperature
 * @param heater: heaterPowerW with the fields of the vapour
 * @param expansion: heat input, liquid expansion, heat capacity and density
 * @returns per scenario flow and area; governing scenario and its area; notComputed with missing fields; statement
 * @range p_2 < p_1
 * @error CALC_OUT_OF_RANGE outside the range
 * @source api-521:2020; iec-60534-2-1:2011; api-520-1:2020
 */
export const worstInflow = calculation({
  id: 'relief.worstInflow',
  title: 'Worst inflow to be relieved',
  inputs,
  outputs: z.strictObject({
    gasSupplyFlowKgPerS: flow('kg/s', 'W_g', 'Gas let in by a regulator failed open'),
    gasSupplyAreaM2: flow('m2', 'A_g', 'Area for the gas'),
    fireHeatW: flow('W', 'Q_f', 'Heat input of a fire'),
    fireFlowKgPerS: flow('kg/s', 'W_f', 'Vapour that the fire makes'),
    fireAreaM2: flow('m2', 'A_f', 'Area for the fire'),
    heaterFlowKgPerS: flow('kg/s', 'W_h', 'Vapour that the heater makes at full power'),
    heaterAreaM2: flow('m2', 'A_h', 'Area for the heater'),
    expansionFlowM3PerS: flow('m3/s', 'Q_e', 'Volume by which the liquid grows'),
    expansionAreaM2: flow('m2', 'A_e', 'Area for the expansion'),
    governing: z
      .enum(['gas supply', 'fire', 'heater runaway', 'thermal expansion', 'none'])
      .meta({ description: 'Computed scenario that needs the largest area' }),
    areaM2: flow('m2', 'A', 'Largest area of the computed scenarios'),
    notComputed: z.array(
      z.strictObject({
        scenario,
        missing: z.array(z.string()).meta({ description: 'What it needs: fields that were not given' }),
      }),
    ),
    statement: z.string().meta({ description: 'What the result does not cover' }),
  }),
  formula: String.raw`A = \max(A_g, A_f, A_h, A_e),\quad W_f = \frac{Q_f}{h_v},\quad W_h = \frac{P}{h_v},\quad Q_e = \frac{\beta\,\dot Q}{\rho\,c_p}`,
  range: 'p_2 < p_1; only scenarios whose inputs are given; never a runaway reaction',
  source: [
    published('api-521:2020 causes of overpressure, abnormal heat input'),
    published('iec-60534-2-1:2011 gas sizing without fittings'),
    published('api-520-1:2020 sizing for gas or vapour and for liquid'),
    published('valve-selection-handbook p. 275'),
  ],
  compute: (given, log) => {
    const notComputed: { scenario: z.output<typeof scenario>; missing: string[] }[] = [];
    const supply = isSupplyGiven(given) ? gasSupplyScenario(given, log) : undefined;
    if (supply && !supply.ok) return supply;
    if (!supply) notComputed.push({ scenario: 'gas supply', missing: [...missingOf(given, supplyFields)] });

    const fire = fireScenario(given, log);
    if (!fire.ok) return fire;
    if ('missing' in fire.value) notComputed.push({ scenario: 'fire', missing: fire.value.missing });

    const heater = heaterScenario(given, log);
    if (!heater.ok) return heater;
    if ('missing' in heater.value) {
      notComputed.push({ scenario: 'heater runaway', missing: heater.value.missing });
    }

    const expansion = expansionScenario(given, log);
    if (!expansion.ok) return expansion;
    if ('missing' in expansion.value) {
      notComputed.push({ scenario: 'thermal expansion', missing: expansion.value.missing });
    }
    notComputed.push({ scenario: 'runaway reaction', missing: ['calorimetric data'] });

    const areas = [
      ...(supply ? [{ governing: 'gas supply' as const, areaM2: supply.value.areaM2 }] : []),
      ...('areaM2' in fire.value ? [{ governing: 'fire' as const, areaM2: fire.value.areaM2 }] : []),
      ...('areaM2' in heater.value
        ? [{ governing: 'heater runaway' as const, areaM2: heater.value.areaM2 }]
        : []),
      ...('areaM2' in expansion.value
        ? [{ governing: 'thermal expansion' as const, areaM2: expansion.value.areaM2 }]
        : []),
    ];
    const [first, ...others] = areas;
    const worst = first && others.reduce((most, next) => (next.areaM2 > most.areaM2 ? next : most), first);
    if (worst) {
      log?.({
        symbol: 'A',
        formula: 'max over the computed scenarios',
        substituted: areas.map(({ governing, areaM2 }) => `${governing} ${shown(areaM2)}`).join(', '),
        value: worst.areaM2,
        unit: 'm2',
        note: `${worst.governing} governs. ${runawayStatement}`,
      });
    } else {
      log?.({
        symbol: 'A',
        formula: 'max over the computed scenarios',
        substituted: 'no scenario has all of its inputs',
        value: 'none',
        unit: 'm2',
        note: runawayStatement,
      });
    }
    return succeed({
      ...(supply
        ? { gasSupplyFlowKgPerS: supply.value.massFlowKgPerS, gasSupplyAreaM2: supply.value.areaM2 }
        : {}),
      ...('areaM2' in fire.value
        ? {
            fireHeatW: fire.value.heatW,
            fireFlowKgPerS: fire.value.massFlowKgPerS,
            fireAreaM2: fire.value.areaM2,
          }
        : {}),
      ...('areaM2' in heater.value
        ? { heaterFlowKgPerS: heater.value.massFlowKgPerS, heaterAreaM2: heater.value.areaM2 }
        : {}),
      ...('areaM2' in expansion.value
        ? { expansionFlowM3PerS: expansion.value.flowM3PerS, expansionAreaM2: expansion.value.areaM2 }
        : {}),
      governing: worst?.governing ?? ('none' as const),
      ...(worst ? { areaM2: worst.areaM2 } : {}),
      notComputed,
      statement: runawayStatement,
    });
  },
});
