import { publicProcedure } from '../../trpc/procedures.js';
import { getHealthOutput } from './get-health.schema.js';

/** Whether this API can work, for whoever watches it. */
export const getHealth = publicProcedure.output(getHealthOutput).query(async ({ ctx }) => {
  try {
    await ctx.database.$queryRaw`SELECT 1`;
    return { database: 'answers' };
  } catch {
    return { database: 'does not answer' };
  }
});
