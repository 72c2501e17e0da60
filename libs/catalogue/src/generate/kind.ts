import { type ItemInput, protectionMarking, type SlotName } from '@flangewise/model';
import { z } from 'zod';
import type { PartMaterial } from './part-materials.js';

/** What a row of any series may say. Temperatures in °C and pressures in bar, as the trade lists them. */
const commonRow = {
  families: z.array(z.string()).min(1),
  leadTimeDays: z.int().min(0),
  furtherDays: z.int().min(0).default(0),
  priceEur: z.number().positive(),
  priceFactor: z.number().positive().default(1),
  massFactor: z.number().positive().default(1),
  rating: z
    .strictObject({ bar: z.number().positive().optional(), minC: z.number(), maxC: z.number() })
    .optional(),
  protection: protectionMarking.nullable().optional(),
  placement: z.enum(['at the vessel', 'outside the area']).default('at the vessel'),
  loadW: z.number().min(0).default(0),
  portM: z.number().positive().optional(),
  portsM: z.array(z.number().positive()).optional(),
  reachM: z.number().positive().optional(),
  wetted: z.array(z.string()).optional(),
};

type CommonRow = z.output<z.ZodObject<typeof commonRow>>;
export type RowOf<T extends z.ZodRawShape> = CommonRow & z.output<z.ZodObject<T>>;

type Common =
  | 'slot'
  | 'id'
  | 'name'
  | 'families'
  | 'massKg'
  | 'leadTimeDays'
  | 'wetted'
  | 'rating'
  | 'electrical'
  | 'portsM'
  | 'reachM'
  | 'life';

type AttributesOf<S extends SlotName> = Omit<Extract<ItemInput, { slot: S }>, Common>;

/** What is computed from a row: name, mass, and the attributes of the slot. */
export interface Completed<A> {
  readonly name: string;
  readonly massKg: number;
  readonly attributes: A;
  /** Pressure that follows from the row [bar], where the row rates none. */
  readonly ratedBar?: number;
  /** Vacuum that the part does not stand. */
  readonly noVacuum?: boolean;
  /** Electrical load that follows from the row [W]. */
  readonly loadW?: number;
  /** Ports that follow from the row [m]. */
  readonly portsM?: readonly number[];
}

/** A kind of part: what a row of its series says, and what is computed from it. */
export interface Kind {
  readonly slot: SlotName;
  complete(
    row: unknown,
    material: PartMaterial | undefined,
  ): { readonly row: CommonRow; readonly completed: Completed<object> };
}

export const kind = <S extends SlotName, const T extends z.ZodRawShape>(
  slot: S,
  shape: T,
  complete: (row: RowOf<T>, material: PartMaterial | undefined) => Completed<AttributesOf<S>>,
): Kind => {
  const schema = z.strictObject({ ...commonRow, ...shape });
  return {
    slot,
    complete(row, material) {
      const read = schema.parse(row) as RowOf<T>;
      return { row: read, completed: complete(read, material) };
    },
  };
};

/** A kind that is always of one material. */
export const kindOfMaterial = <S extends SlotName, const T extends z.ZodRawShape>(
  slot: S,
  shape: T,
  complete: (row: RowOf<T>, material: PartMaterial) => Completed<AttributesOf<S>>,
): Kind =>
  kind(slot, shape, (row, material) => {
    if (material === undefined)
      throw new Error(`a series of the slot ${slot} names the materials of its parts`);
    return complete(row, material);
  });
