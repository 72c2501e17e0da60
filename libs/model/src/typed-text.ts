import { z } from 'zod';

/** `2026-11-24` */
export const calendarDate = z.iso.date('a calendar date like 2026-11-24 is allowed');

/** A percentage as text, so that no digit is lost. */
export const percentText = z
  .string()
  .regex(/^\d{1,2}(\.\d{1,2})?$/, 'a percentage from 0 to 99.99 with up to two decimals is allowed');
