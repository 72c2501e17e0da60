import { type Catalogue, catalogueSchema } from '@flangewise/model';
import { z } from 'zod';

/** What cannot be used in a file: where it stands, what was given, what is allowed and what to do. */
export const importTroubleSchema = z.object({
  /** Sheet of a workbook; absent where the file has none. */
  sheet: z.string().optional(),
  /** Line of the file or sheet, from 1; the head is line 1. */
  line: z.int().min(1),
  /** Head of the column, or path in a document; empty where the whole line is meant. */
  column: z.string(),
  given: z.string(),
  message: z.string(),
});

/** What a file says about a catalogue; the catalogue that it would give is there only where nothing is in the way. */
export const importReportSchema = z.object({
  /** Items that the file holds. */
  rows: z.int().min(0),
  added: z.int().min(0),
  changed: z.int().min(0),
  unchanged: z.int().min(0),
  /** In the order of the file, the first of them where there are very many. */
  troubles: z.array(importTroubleSchema),
  /** How many more there are than are listed. */
  furtherTroubles: z.int().min(0),
  catalogue: catalogueSchema.optional(),
});

export type ImportTrouble = z.output<typeof importTroubleSchema>;
export type ImportReport = Omit<z.output<typeof importReportSchema>, 'catalogue'> & {
  readonly catalogue?: Catalogue;
};
