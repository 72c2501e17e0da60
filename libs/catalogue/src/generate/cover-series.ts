import { z } from 'zod';
import data from '../designs/cover-series.json' with { type: 'json' };
import { permissibleCoverPressurePa } from '../complete-cover.js';
import type { CoverDesign } from '../cover-design.js';
import { jointOf } from '../joint.js';
import { leastOf } from '../least-step.js';
import { listPrice } from './list-price.js';
import { partMaterial } from './part-materials.js';
import { patternOf } from './port-patterns.js';
import type { PricedDesign } from './priced-design.js';
import { numberAfter } from './series.js';
import { kelvin } from './words.js';

const seriesSchema = z.strictObject({
  firstNumber: z.string(),
  families: z.array(z.string()).min(1),
  bore: z.int().positive(),
  heavyRim: z.boolean(),
  pressuresBar: z.array(z.number().positive()).min(1),
  maxC: z.number(),
  patterns: z.array(z.string()).min(1),
  materials: z.array(z.string()).min(1),
  carrier: z.string().optional(),
  leadTimeDays: z.int().positive(),
  priceEur: z.number().positive().meta({ description: 'In 1.4404 with pattern A at the first pressure' }),
});

type Series = z.output<typeof seriesSchema>;

const thickness = { step: 0.001, most: 0.3 };
/** Thickness below which ports cannot be sealed. */
const thinnestM = 0.01;
/** What another pattern than the usual one costs more. */
const otherPatternFactor = 1.08;

const constructionOf = ({ carrier }: Series): 'metal' | 'lined' =>
  carrier === undefined ? 'metal' : 'lined';

const lowestC = ({ carrier }: Series, material: { readonly minC: number }): number =>
  carrier === undefined ? material.minC : -20;

const coverOf = (
  series: Series,
  place: { readonly id: string; readonly bar: number; readonly pattern: string; readonly material: string },
  designed: readonly CoverDesign[],
): PricedDesign<CoverDesign> => {
  const material = partMaterial(place.material);
  const { label, bushing, bushingBoreM, ports } = patternOf(series.bore, place.pattern, designed);
  const design: Omit<CoverDesign, 'thicknessM'> = {
    id: place.id,
    families: series.families,
    bore: series.bore,
    material: place.material,
    construction: constructionOf(series),
    carrier: series.carrier ?? null,
    ports: [...ports],
    bushing,
    bushingBoreM,
    ...jointOf(series.bore, series.heavyRim),
    minTemperatureK: kelvin(lowestC(series, material)),
    maxTemperatureK: kelvin(Math.min(series.maxC, material.maxC)),
    label,
    leadTimeDays: series.leadTimeDays + material.furtherDays,
  };
  const thicknessM = leastOf(thinnestM, thickness, (thicknessM) => {
    const carried = permissibleCoverPressurePa({ ...design, thicknessM });
    return carried.ok && carried.value >= place.bar * 1e5;
  });
  if (thicknessM === undefined)
    throw new Error(`${place.id}: no plate up to 300 mm carries ${String(place.bar)} bar with these ports`);
  const factor = material.priceFactor * (place.pattern === 'A' ? 1 : otherPatternFactor);
  return { design: { ...design, thicknessM }, priceEur: listPrice(series.priceEur * factor) };
};

/** Covers of every series: each pressure, pattern and material one, the thickness the least that carries. */
export const coversOfSeries = (designed: readonly CoverDesign[]): readonly PricedDesign<CoverDesign>[] =>
  z
    .array(seriesSchema)
    .parse(data.series)
    .flatMap((series) =>
      series.pressuresBar
        .flatMap((bar) => series.patterns.map((pattern) => ({ bar, pattern })))
        .flatMap((one) => series.materials.map((material) => ({ ...one, material })))
        .map((one, place) =>
          coverOf(series, { ...one, id: numberAfter(series.firstNumber, place) }, designed),
        ),
    );
