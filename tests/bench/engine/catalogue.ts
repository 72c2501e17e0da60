import type { Random } from './random.js';

export type SizeName = 'S' | 'M' | 'L';

interface Size {
  readonly items: number;
  /** At most so many items in a slot. */
  readonly most: number;
  /** Levels of each attribute. */
  readonly size: number;
  readonly rating: number;
  readonly material: number;
  readonly interface: number;
  readonly spread: number;
}

export const sizes: Record<SizeName, Size> = {
  S: { items: 300, most: 40, size: 6, rating: 4, material: 4, interface: 4, spread: 2 },
  M: { items: 3000, most: 200, size: 8, rating: 6, material: 6, interface: 8, spread: 3 },
  L: { items: 30_000, most: 5000, size: 10, rating: 8, material: 8, interface: 12, spread: 4 },
};

export const slotNames = [
  ...['vessel', 'cover', 'lining', 'drive', 'coupling', 'shaft', 'seal', 'impeller', 'baffle', 'jacket'],
  ...['thermostat', 'hose', 'fluid', 'relief', 'disc', 'gauge', 'interlock', 'probe', 'sensor'],
  ...['controller', 'recorder', 'inlet', 'dosing', 'sampling'],
];

export type Attribute = 'size' | 'rating' | 'material' | 'interface' | 'demand' | 'strength';

/** The items of one slot, attribute by attribute. */
export interface Slot {
  readonly name: string;
  readonly count: number;
  readonly attributes: Readonly<Record<Attribute, Int32Array>>;
  readonly price: Int32Array;
  readonly days: Int32Array;
}

export interface Catalogue {
  readonly slots: readonly Slot[];
  /** Systems that every rule lets stand: the item of each slot. */
  readonly planted: readonly (readonly number[])[];
}

const PLANTED = 3;

function itemCounts({ items, most }: Size, random: Random): number[] {
  const weights = slotNames.map(() => 0.25 + random.next() * random.next() * 3);
  const total = weights.reduce((a, b) => a + b, 0);
  const counts = weights.map((w) => Math.max(5, Math.min(most, Math.round((items * w) / total))));
  let missing = items - counts.reduce((a, b) => a + b, 0);
  while (missing > 0) {
    const slot = random.below(counts.length);
    if ((counts[slot] as number) >= most) continue;
    counts[slot] = (counts[slot] as number) + 1;
    missing--;
  }
  return counts;
}

/** A catalogue of invented parts: a few slots hold most of the items, and few levels of each attribute occur. */
export function makeCatalogue(size: Size, random: Random): Catalogue {
  const counts = itemCounts(size, random);
  const plants = Array.from({ length: PLANTED }, () => ({
    size: random.below(size.size),
    rating: random.below(size.rating),
    material: random.below(size.material),
  }));
  const slots = slotNames.map((name, s): Slot => {
    const count = counts[s] as number;
    const column = (): Int32Array => new Int32Array(count);
    const attributes: Record<Attribute, Int32Array> = {
      ...{ size: column(), rating: column(), material: column() },
      ...{ interface: column(), demand: column(), strength: column() },
    };
    const price = column();
    const days = column();
    for (let i = 0; i < count; i++) {
      const drawn = {
        size: random.below(size.size),
        rating: random.below(size.rating),
        material: random.below(size.material),
      };
      const level = plants[i] ?? drawn;
      attributes.size[i] = level.size;
      attributes.rating[i] = level.rating;
      attributes.material[i] = level.material;
      attributes.interface[i] = random.below(size.interface);
      attributes.demand[i] = 3 * level.size + level.rating + random.below(size.spread);
      attributes.strength[i] = 2 * level.size + 2 * level.rating + random.below(size.spread);
      const base = 80 + 60 * level.size + 45 * level.rating + 70 * ((level.material * 5 + s) % size.material);
      price[i] = Math.round(base * (0.7 + 0.6 * random.next()));
      days[i] = 1 + random.below(40);
    }
    return { name, count, attributes, price, days };
  });
  const planted = Array.from({ length: PLANTED }, (_, p) => slotNames.map(() => p));
  return { slots, planted };
}
