import { APIError, createAuthMiddleware } from 'better-auth/api';
import { RateLimiterPrisma, RateLimiterRes } from 'rate-limiter-flexible';
import { z } from 'zod';
import type { Database } from '../database/client.js';

export const signInPath = '/sign-in/email';

/** So many attempts in a row without the right password; then whoever guesses has to wait, from however many addresses he does. */
export const personLimit = { points: 10, duration: 15 * 60 };

/** Longer addresses do not exist (RFC 5321, 4.5.3.1.3); what is none is refused without looking for anybody. */
const attempt = z.object({ email: z.email().max(254).toLowerCase() });

/**
 * Counts attempts to sign in by the person who is tried, in the database, so that several API processes count together. An
 * address that belongs to nobody counts alike: what is refused tells nothing. The right password forgets the count.
 */
export function limitAttempts(database: Database) {
  const limiter = new RateLimiterPrisma({
    ...personLimit,
    storeClient: database,
    tableName: 'signInAttempts' satisfies keyof Database,
    keyPrefix: '',
  });
  return {
    before: createAuthMiddleware(async ({ path, body }) => {
      const given = attempt.safeParse(body);
      if (path !== signInPath || !given.success) return;
      try {
        await limiter.consume(given.data.email);
      } catch (refused) {
        if (!(refused instanceof RateLimiterRes)) throw refused;
        const seconds = Math.ceil(refused.msBeforeNext / 1000);
        throw new APIError(
          'TOO_MANY_REQUESTS',
          { message: 'too many attempts to sign in' },
          { 'x-retry-after': String(seconds) },
        );
      }
    }),
    after: createAuthMiddleware(async ({ path, body, context }) => {
      const given = attempt.safeParse(body);
      if (path === signInPath && given.success && context.newSession !== null)
        await limiter.delete(given.data.email);
    }),
  };
}
