import { z } from 'zod';
import { inquirySchema } from './inquiry.js';
import { wantedServiceSchema } from './price-terms.js';
import { frameSlots, setSlots, type SlotName } from './slot.js';
import { specialPartSchema } from './special-part.js';
import { calendarDate, percentText } from './typed-text.js';

/** An item number, null for "none of these", absent while nobody has chosen. */
const choice = z.string().nullable().optional();

const choices = (names: readonly SlotName[]) =>
  z.strictObject(Object.fromEntries(names.map((name) => [name, choice])) as Record<SlotName, typeof choice>);

const vesselSet = z.strictObject({
  label: z.string().optional(),
  count: z.int().min(1).max(48).default(1),
  choices: choices(setSlots).partial(),
});

/** Settings that an engineer may change with a reason; the defaults are the maker's. */
const settingsSchema = z.strictObject({
  fillLimit: z
    .number()
    .gt(0)
    .max(0.95)
    .optional()
    .meta({ unit: '1', description: 'Largest hot fill; 0.85, foaming 0.6' }),
  fillLimitReason: z.string().optional(),
  serviceFactor: z
    .number()
    .min(1)
    .max(3)
    .optional()
    .meta({ unit: '1', description: 'On the stirrer torque; 1.25' }),
});

/** A vessel that stands in no price list: given by its numbers, computed and priced by method, to be released. */
export const specialVesselSchema = z.strictObject({
  set: z.int().min(0).default(0),
  volumeL: z.number().positive().max(1000).meta({ unit: 'L' }),
  innerDiameterM: z.number().positive().max(2).optional().meta({ unit: 'm' }),
  pressurePaGauge: z.number().positive().max(4e8).meta({ unit: 'Pa' }),
  maxTemperatureK: z.number().positive().max(1273.15).meta({ unit: 'K' }),
  material: z.string(),
  releasedBy: z.string().optional(),
});

/**
 * Choices that make a system: one frame and one or more vessel sets, with the inquiry that they answer.
 * Slots nobody has chosen yet stay out.
 */
export const systemSchema = z
  .strictObject({
    name: z.string().default('A'),
    catalogueRevision: z.string().optional(),
    inquiry: inquirySchema,
    frame: choices(frameSlots).partial().default({}),
    sets: z
      .array(vesselSet)
      .min(1)
      .max(8)
      .default([{ count: 1, choices: {} }]),
    specials: z.array(specialVesselSchema).default([]),
    /** Covers and shafts made for this system. */
    specialParts: z.array(specialPartSchema).max(16).optional(),
    settings: settingsSchema.default({}),
    /** Client, date and price list of the offer that is to be made. */
    offer: z
      .strictObject({
        number: z.string().optional(),
        revision: z.string().optional(),
        client: z.string().optional(),
        date: calendarDate.optional(),
        priceList: z.string().optional(),
        discountPercent: percentText.optional(),
        discountReleasedBy: z.string().optional(),
        taxPercent: percentText.optional(),
        services: z.array(wantedServiceSchema).optional(),
      })
      .optional(),
  })
  .superRefine(({ sets, inquiry }, context) => {
    if (sets.length !== inquiry.sets.length)
      context.addIssue({
        code: 'custom',
        path: ['sets'],
        message: `${String(sets.length)} of a system for an inquiry of ${String(inquiry.sets.length)}: a system has one set for each set of its inquiry, in the same order`,
      });
  });

export type SystemInput = z.input<typeof systemSchema>;
export type System = z.output<typeof systemSchema>;
export type Choices = Readonly<Partial<Record<SlotName, string | null | undefined>>>;
export type SpecialVessel = z.output<typeof specialVesselSchema>;
