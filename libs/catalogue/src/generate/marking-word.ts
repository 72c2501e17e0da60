import type { z } from 'zod';
import type { protectionMarking } from '@flangewise/model';

/** `2G IIC T4`; undefined for a part without marking. */
export const markingWord = (
  protection: z.output<typeof protectionMarking> | null | undefined,
): string | undefined =>
  protection === null || protection === undefined
    ? undefined
    : `${protection.category} ${protection.gasGroup} ${protection.temperatureClass}`;
