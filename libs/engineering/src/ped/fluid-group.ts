import { z } from 'zod';
import { type Basis, type Outcome, succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { basisSchema } from '../materials/basis.js';
import { shown } from '../shown.js';
import { fromMemory, published } from '../source-reference.js';
import groupOne from './group-1-hazard-statements.json' with { type: 'json' };
import { findSubstanceHazards } from './substance-hazards.js';

export interface FluidGroup {
  readonly fluidGroup: 1 | 2;
  readonly reason: string;
  readonly basis: Basis;
  readonly source: string;
}

const groupOneStatements = new Set(groupOne.hazardStatements);

/**
 * Fluid group of a substance that is held at temperatures up to TS, with the reason.
 * @error CALC_UNKNOWN_SUBSTANCE
 */
export const fluidGroupOf = (substance: string, maxTemperatureK: number): Outcome<FluidGroup> => {
  const hazards = findSubstanceHazards(substance);
  if (!hazards.ok) return hazards;
  const { name, state, hazardStatements, flashPointC, basis, source } = hazards.value;
  const answer = (fluidGroup: 1 | 2, reason: string): Outcome<FluidGroup> =>
    succeed({ fluidGroup, reason: `${name}: ${reason}`, basis, source });
  const listed = hazardStatements.filter((statement) => groupOneStatements.has(statement));
  if (listed.length > 0) return answer(1, `article 13(1)(a), ${listed.join(', ')}`);
  if (state === 'liquid' && flashPointC !== undefined) {
    return maxTemperatureK - 273.15 > flashPointC
      ? answer(1, `TS above the flash point of ${shown(flashPointC)} °C`)
      : answer(2, `TS not above the flash point of ${shown(flashPointC)} °C`);
  }
  if (hazardStatements.includes('H226')) {
    return answer(1, 'flammable liquid of category 3 without a flash point on file: taken as above it');
  }
  const unknownFlash = state === 'liquid' && hazardStatements.length === 0 && name !== 'water';
  return answer(
    2,
    unknownFlash
      ? 'no listed hazard class; no flash point is on file, TS above it would make group 1'
      : 'no listed hazard class',
  );
};

/**
 * Fluid group of a substance under the Pressure Equipment Directive at its highest temperature TS.
 *
 *   group 1 where a class of article 13(1)(a) applies or TS lies above the flash point, else group 2
 *
 * @param substance       common name or CAS number
 * @param maxTemperatureK TS [K]
 * @returns fluidGroup 1 or 2, with the reason and what the classification is worth
 * @range substances of substance-hazards.json; a mixture or several fluids take the strictest
 * @error CALC_UNKNOWN_SUBSTANCE
 * @source 2014/68/EU art. 13; classes by 1272/2008/EC annex VI or the source of each row
 */
export const fluidGroup = calculation({
  id: 'ped.fluidGroup',
  title: 'Fluid group of a substance',
  inputs: z.strictObject({
    substance: z.string().min(1).meta({ description: 'Common name or CAS number' }),
    maxTemperatureK: quantity(
      { unit: 'K', symbol: 'TS', description: 'Highest allowable temperature' },
      z.number().min(4).max(1500),
    ),
  }),
  outputs: z.strictObject({
    fluidGroup: quantity({ unit: '1', symbol: 'group', description: 'Fluid group, 1 or 2' }),
    reason: z.string().meta({ description: 'Class or flash point that decides' }),
    basis: basisSchema.meta({ description: 'What the classification on file is worth' }),
  }),
  formula: String.raw`\text{group} = 1 \iff \text{class in art. 13(1)(a)} \lor TS > T_\text{flash}`,
  range: 'substances on file; the classification of the supplier governs where it is stricter',
  source: [published('2014/68/EU art. 13'), fromMemory('1272/2008/EC annex VI, rows so marked')],
  compute: ({ substance, maxTemperatureK }, log) => {
    const group = fluidGroupOf(substance, maxTemperatureK);
    if (!group.ok) return group;
    const { fluidGroup: value, reason, basis, source } = group.value;
    log?.({
      symbol: 'group',
      formula: 'article 13(1)(a), or TS above the flash point',
      substituted: reason,
      value,
      unit: '1',
      note: `${source} (${basis})`,
    });
    return succeed({ fluidGroup: value, reason, basis });
  },
});
