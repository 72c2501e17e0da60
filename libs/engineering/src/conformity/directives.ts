import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { zones } from '../hazardous-area/zones.js';
import { pedCategories } from '../ped/annex-ii-vessels.js';
import { fromMemory, published } from '../source-reference.js';

/** First day on which the Machinery Regulation applies and the directive is repealed. */
const machineryRegulationFrom = '2027-01-20';

const law = z.strictObject({
  law: z.string().meta({ description: 'Short name of the act with its number' }),
  applies: z.boolean().meta({ description: 'Whether it applies to the system' }),
  reason: z.string().meta({ description: 'Why it applies or not, with the article' }),
});

const inputs = z.strictObject({
  placedOnMarket: z.iso.date().meta({ description: 'Day of placing on the market, year-month-day' }),
  pressureCategory: z.enum(pedCategories).meta({ description: 'Category from ped.assembly' }),
  poweredMotion: z.boolean().meta({ description: 'Parts move by other than human force: stirrer, lift' }),
  electrical: z.boolean().meta({ description: 'Electrical or electronic parts' }),
  alternatingVoltageV: quantity(
    { unit: 'V', symbol: 'U_ac', description: 'Rated alternating voltage' },
    z.number().min(0),
  ).optional(),
  directVoltageV: quantity(
    { unit: 'V', symbol: 'U_dc', description: 'Rated direct voltage' },
    z.number().min(0),
  ).optional(),
  zone: z.enum(zones).optional().meta({ description: 'Zone in which it stands or which it holds' }),
});

type Inputs = z.output<typeof inputs>;
type Law = z.output<typeof law>;

const machineryOf = ({ poweredMotion, placedOnMarket }: Inputs): Law => ({
  // ISO dates sort as texts.
  law:
    placedOnMarket < machineryRegulationFrom
      ? 'Machinery Directive 2006/42/EC'
      : 'Machinery Regulation (EU) 2023/1230',
  applies: poweredMotion,
  reason: poweredMotion
    ? `powered moving parts; placed on the market ${placedOnMarket}, ${placedOnMarket < machineryRegulationFrom ? 'before' : 'from'} 20 January 2027`
    : 'no part moves by other than human force',
});

const explosionOf = ({ zone }: Inputs): Law => ({
  law: 'ATEX Directive 2014/34/EU',
  applies: zone !== undefined,
  reason:
    zone === undefined
      ? 'no explosive atmosphere declared'
      : `equipment for zone ${zone}, and safety devices outside it that serve it: article 1(1)`,
});

const lowVoltageOf = (given: Inputs): Law => {
  const { alternatingVoltageV: ac, directVoltageV: dc } = given;
  const inRange =
    (ac !== undefined && ac >= 50 && ac <= 1000) || (dc !== undefined && dc >= 75 && dc <= 1500);
  const base = { law: 'Low Voltage Directive 2014/35/EU' };
  if (!given.electrical || !inRange) {
    return {
      ...base,
      applies: false,
      reason: 'no rating from 50 to 1000 V AC or 75 to 1500 V DC: article 1',
    };
  }
  if (given.zone !== undefined) {
    return {
      ...base,
      applies: false,
      reason: 'equipment for explosive atmospheres: annex II; its safety objectives through 2014/34/EU',
    };
  }
  return given.poweredMotion
    ? {
        ...base,
        applies: false,
        reason: 'its safety objectives are kept, the conformity of the whole is assessed by machinery law',
      }
    : { ...base, applies: true, reason: 'rated voltage within article 1' };
};

const compatibilityOf = ({ electrical }: Inputs): Law => ({
  law: 'EMC Directive 2014/30/EU',
  applies: electrical,
  reason: electrical
    ? 'apparatus that can disturb or be disturbed; a fixed installation carries no CE marking by it, article 19'
    : 'no electrical part',
});

/** Category I at most and covered by machinery, low voltage or explosion protection law: outside the directive. */
const pressureOf = ({ pressureCategory }: Inputs, others: readonly Law[]): Law => {
  const base = { law: 'Pressure Equipment Directive 2014/68/EU' };
  if (pressureCategory === 'out of scope') {
    return { ...base, applies: false, reason: 'PS not above 0.5 bar: article 1(1)' };
  }
  const covering = others.find(({ applies }) => applies);
  if (pressureCategory === 'Art4(3)') {
    return {
      ...base,
      applies: true,
      reason: 'article 4(3): sound engineering practice, no CE marking by it',
    };
  }
  return pressureCategory === 'I' && covering !== undefined
    ? { ...base, applies: false, reason: `category I and covered by ${covering.law}: article 1(2)(f)` }
    : { ...base, applies: true, reason: `category ${pressureCategory}: article 4` };
};

/**
 * Acts of the European Union that a system falls under, by what it contains and the day it is placed on the market.
 *
 * @param placedOnMarket   ISO date; the Machinery Regulation applies from 20 January 2027
 * @param pressureCategory from ped.assembly
 * @param poweredMotion, electrical, alternatingVoltageV, directVoltageV, zone
 * @returns laws with applies and reason; statement
 * @range reactors for use at work; research machinery for temporary use in laboratories is outside machinery law
 * @error CALC_INVALID_INPUT for a text that is no date
 * @source 2006/42/EC; 2023/1230/EU art. 51, 54; 2014/30/EU; 2014/35/EU art. 1, annex II; 2014/34/EU art. 1; 2014/68/EU art. 1(2)(f)
 */
export const directives = calculation({
  id: 'conformity.directives',
  title: 'Acts of the European Union for a system',
  inputs,
  outputs: z.strictObject({
    laws: z.array(law),
    statement: z.string().meta({ description: 'What applies, to be checked against the text in force' }),
  }),
  formula: String.raw`\text{machinery} = \begin{cases} \text{2006/42/EC} & t < \text{2027-01-20} \\ \text{(EU) 2023/1230} & t \ge \text{2027-01-20} \end{cases}`,
  range:
    'systems placed on the market of the European Union; machinery law not for temporary use in research laboratories',
  source: [
    published('2023/1230/EU application from 20 January 2027'),
    published('2014/35/EU art. 1 and annex II'),
    published('2014/34/EU art. 1(1)'),
    published('2014/30/EU apparatus and fixed installations'),
    fromMemory('2006/42/EC art. 1, annex I 1.5.1'),
    fromMemory('2014/68/EU art. 1(2)(f)'),
  ],
  compute: (given, log) => {
    const machinery = machineryOf(given);
    const explosion = explosionOf(given);
    const voltage = lowVoltageOf(given);
    const laws = [
      pressureOf(given, [machinery, explosion, voltage]),
      machinery,
      explosion,
      voltage,
      compatibilityOf(given),
    ];
    for (const item of laws) {
      log?.({
        symbol: 'applies',
        formula: item.law,
        substituted: item.reason,
        value: item.applies ? 'yes' : 'no',
        unit: '1',
      });
    }
    const applying = laws.filter(({ applies }) => applies).map(({ law: title }) => title);
    return succeed({
      laws,
      statement: `${applying.length === 0 ? 'None of these acts applies' : applying.join('; ')}. To be checked against the text in force.`,
    });
  },
});
