import { z } from 'zod';
import { calendarDate } from './typed-text.js';

export const itemNumber = z
  .string()
  .regex(/^[A-Z]{2}-\d{4,5}$/)
  .meta({ description: 'Item number', examples: ['VS-1002'] });

const length = (description: string) => z.number().positive().meta({ unit: 'm', description });

/** What an item's life, papers and trade say; all but its state may be left out. */
export const itemLife = {
  life: z.enum(['introduced', 'current', 'to be discontinued', 'discontinued']).default('current'),
  successor: itemNumber.optional().meta({ description: 'Number of the item that follows it' }),
  alternatives: z
    .array(itemNumber)
    .min(1)
    .optional()
    .meta({ description: 'Numbers of items that do as well' }),
  validFrom: calendarDate.optional().meta({ description: 'First day on which it is sold' }),
  validUntil: calendarDate.optional().meta({ description: 'Last day on which it is sold' }),
  envelope: z
    .strictObject({
      lengthM: length('Length, or diameter'),
      widthM: length('Width, or diameter'),
      heightM: length('Height'),
    })
    .optional()
    .meta({ description: 'Room that it takes, for drawings, where its other dimensions do not say it' }),
  suppliedWith: z
    .array(z.string().min(1))
    .min(1)
    .optional()
    .meta({ description: 'Certificates that come with it' }),
  tariffNumber: z
    .string()
    .regex(/^\d{4}(\.\d{2}){0,3}$/)
    .optional()
    .meta({
      description: 'Customs tariff number, where it is another than that of its slot',
      examples: ['8481.40'],
    }),
  originCountry: z
    .string()
    .regex(/^[A-Z]{2}$/)
    .optional()
    .meta({
      description: 'Country of origin by ISO 3166-1, where it is another than the maker’s',
      examples: ['NL'],
    }),
  unspsc: z
    .string()
    .regex(/^\d{8}$/)
    .optional()
    .meta({ description: 'UNSPSC code, where it is another than that of its slot', examples: ['41102700'] }),
};
