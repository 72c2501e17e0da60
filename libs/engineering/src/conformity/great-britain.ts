import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation } from '../calculation.js';
import { pedCategories } from '../ped/annex-ii-vessels.js';
import { conformityOf } from '../ped/conformity-modules.js';
import { maxPressureField, volumeField } from '../ped/vessel-category.js';
import { shown } from '../shown.js';
import { fromMemory, published } from '../source-reference.js';

/** Product of pressure and volume from which a vessel needs a written scheme, unless it holds steam [bar·L]. */
const schemeFromBarL = 250;
/** Pressure over the atmosphere from which a fluid is relevant [bar]. */
const relevantFromBar = 0.5;

const checked = 'To be checked against the text in force.';

/**
 * What the law of Great Britain asks of a vessel: placing on the market by the Pressure Equipment (Safety) Regulations
 * 2016, use by the Pressure Systems Safety Regulations 2000.
 *
 *   written scheme: steam, or a relevant fluid with PS V ≥ 250 bar·L
 *
 * @param category            from ped.vesselAssessment or ped.assembly: the tables are the same
 * @param maxPressureBarGauge PS [bar, gauge], volumeL V [L]
 * @param contents            steam; gas, or a liquid whose vapour stands above 0.5 bar gauge; or another liquid
 * @returns marking, approvedBody, relevantFluid, writtenScheme, demands, statement
 * @range vessels for use at work; Northern Ireland keeps the European directive
 * @error CALC_OUT_OF_RANGE from the schema
 * @source uksi-2016-1105; uksi-2000-128 reg. 2, 8
 */
export const greatBritain = calculation({
  id: 'conformity.greatBritain',
  title: 'Law of Great Britain for a vessel',
  inputs: z.strictObject({
    category: z.enum(pedCategories).meta({ description: 'Category by the tables of the directive' }),
    maxPressureBarGauge: maxPressureField,
    volumeL: volumeField,
    contents: z
      .enum(['steam', 'gas', 'liquid'])
      .meta({ description: 'Steam; gas or liquid that stands under its vapour above 0.5 bar; other liquid' }),
  }),
  outputs: z.strictObject({
    marking: z.string().meta({ description: 'Marking for the market' }),
    approvedBody: z.boolean().meta({ description: 'A third party takes part' }),
    relevantFluid: z.boolean().meta({ description: 'Relevant fluid of the regulations of 2000' }),
    writtenScheme: z.boolean().meta({ description: 'Written scheme of examination needed before use' }),
    demands: z.array(z.string()).meta({ description: 'What maker and user have to do' }),
    statement: z.string().meta({ description: 'What it means, to be checked against the text in force' }),
  }),
  formula: String.raw`\text{written scheme} \iff \text{steam} \lor (\text{relevant fluid} \land PS\,V \ge 250\ \mathrm{bar\,L})`,
  range: 'vessels for use at work in England, Scotland and Wales',
  source: [
    published('uksi-2016-1105 as amended, guidance of December 2024'),
    published('uksi-2000-128 reg. 2 and reg. 8'),
    fromMemory('uksi-2000-128 schedule 1, 250 bar litres and steam without threshold'),
  ],
  compute: ({ category, maxPressureBarGauge, volumeL, contents }, log) => {
    const { notifiedBody, ceMarking } = conformityOf(category);
    const product = Number((maxPressureBarGauge * volumeL).toPrecision(12));
    const relevantFluid =
      contents === 'steam' || (contents === 'gas' && maxPressureBarGauge > relevantFromBar);
    const writtenScheme = contents === 'steam' || (relevantFluid && product >= schemeFromBarL);
    const marking = ceMarking
      ? `UKCA marking${notifiedBody ? ' with an approved body' : ''}, or CE marking, which is recognised without end date`
      : 'no marking: sound engineering practice or outside the regulations';
    const demands = [
      ...(ceMarking
        ? [
            'UK declaration of conformity, or the EU one with CE marking; technical documentation kept 10 years',
          ]
        : []),
      ...(relevantFluid
        ? [
            'Safe operating limits established, protective devices, instructions and maintenance (2000 regulations)',
          ]
        : []),
      ...(writtenScheme
        ? ['Written scheme of examination by a competent person before first use, with periodic examination']
        : []),
    ];
    log?.({
      symbol: 'scheme',
      formula: 'steam, or relevant fluid with PS V ≥ 250 bar·L',
      substituted: `${contents}, PS V = ${shown(product)} bar·L`,
      value: writtenScheme ? 'needed' : 'not needed',
      unit: '1',
    });
    return succeed({
      marking,
      approvedBody: notifiedBody,
      relevantFluid,
      writtenScheme,
      demands,
      statement: `Great Britain: category ${category} by the Pressure Equipment (Safety) Regulations 2016, ${marking}; Pressure Systems Safety Regulations 2000: written scheme ${writtenScheme ? 'needed' : 'not needed by the threshold'}. ${checked}`,
    });
  },
});
