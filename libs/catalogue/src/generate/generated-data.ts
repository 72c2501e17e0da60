import { createHash } from 'node:crypto';
import type { Item } from '@flangewise/model';
import { completeCover } from '../complete-cover.js';
import { completeVessel } from '../complete-vessel.js';
import type { CoverDesign } from '../cover-design.js';
import covers from '../designs/covers.json' with { type: 'json' };
import vessels from '../designs/vessels.json' with { type: 'json' };
import type { VesselDesign } from '../vessel-design.js';

export const vesselDesigns = vessels as unknown as readonly VesselDesign[];
export const coverDesigns = covers as unknown as readonly CoverDesign[];

/** The computed data files of the demo range, by name: vessels and covers from their designs. */
export const computedItems = (): Readonly<Record<'vessel' | 'cover', readonly Item[]>> => {
  const failed: string[] = [];
  const complete = <D extends { readonly id: string }>(
    designs: readonly D[],
    one: (design: D) => ReturnType<typeof completeVessel> | ReturnType<typeof completeCover>,
  ): readonly Item[] =>
    designs.flatMap((design) => {
      const item = one(design);
      if (item.ok) return [item.value];
      failed.push(`${design.id}: ${item.error.message}`);
      return [];
    });
  const items = {
    vessel: complete(vesselDesigns, completeVessel),
    cover: complete(coverDesigns, completeCover),
  };
  if (failed.length > 0) throw new Error(`designs that cannot be built:\n${failed.join('\n')}`);
  return items;
};

/** Keys in order, so that the digest does not hang on how a file was written. */
const sorted = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(sorted);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, inner]) => [key, sorted(inner)]),
  );
};

/** Name of a state of the range: the month of its price lists and a digest of all items. */
export const revisionOf = (month: string, items: readonly Item[]): string =>
  `${month}-${createHash('sha256')
    .update(JSON.stringify(sorted(items)))
    .digest('hex')
    .slice(0, 8)}`;
