import { APIError, createAuthMiddleware } from 'better-auth/api';
import { RateLimiterPrisma, RateLimiterRes } from 'rate-limiter-flexible';
import { z } from 'zod';
import type { Database } from '../database/client.js';

export const signInPath = '/sign-in/email';

/** So many attempts in a row without the right password; then whoever guesses has to wait, from however many addresses he does. */
export const personLimit = { points: 10, duration: 15 * 60 };

/** So many within a minute from one address, the right ones not counted, are guessing, whoever is guessed. */
export const addressLimit = { points: 20, duration: 60 };

/** Longer addresses do not exist (RFC 5321, 4.5.3.1.3); what is none is refused without looking for anybody. */
const attempt = z.object({ email: z.email().max(254).toLowerCase() });

/**
 * Counts attempts to sign in, by the person who is tried and by the address they come from, in the database, so that several API
 * processes count together. An e-mail address that belongs to nobody counts alike: what is refused tells nothing. The right
 * password forgets the count of its person, and is not counted against its address.
 */
export function limitAttempts(database: Database) {
  const limiterOf = (limit: { readonly points: number; readonly duration: number }, keyPrefix: string) =>
    new RateLimiterPrisma({
      ...limit,
      storeClient: database,
      tableName: 'signInAttempts' satisfies keyof Database,
      keyPrefix,
    });
  const byPerson = limiterOf(personLimit, '');
  const byAddress = limiterOf(addressLimit, 'from');
  /** The web server's word, or the other end of the connection. */
  const addressOf = (headers: Headers | undefined): string => headers?.get('x-forwarded-for') ?? 'unknown';
  return {
    before: createAuthMiddleware(async ({ path, body, headers }) => {
      if (path !== signInPath) return;
      const given = attempt.safeParse(body);
      try {
        await byAddress.consume(addressOf(headers));
        if (given.success) await byPerson.consume(given.data.email);
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
    after: createAuthMiddleware(async ({ path, body, headers, context }) => {
      const given = attempt.safeParse(body);
      if (path !== signInPath || !given.success || context.newSession === null) return;
      await byPerson.delete(given.data.email);
      await byAddress.reward(addressOf(headers), 1);
    }),
  };
}
