import { z } from 'zod';

/** API 520 part I changed some of its methods; the edition is always named. */
export const api520Edition = z
  .enum(['7th', '10th'])
  .meta({ description: 'Edition of API 520 part I; the 10th (2020) where nothing is given' });
