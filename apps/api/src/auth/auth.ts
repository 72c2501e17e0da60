import { betterAuth } from 'better-auth';
import { prismaAdapter } from 'better-auth/adapters/prisma';
import type { Database } from '../database/client.js';
import { limitAttempts, signInPath } from './limit-attempts.js';
import { Role } from './roles.js';

export interface AuthSettings {
  readonly secret: string;
  /** The address under which people open the product, for instance `http://127.0.0.1:4310`. */
  readonly origin: string;
  readonly trustedOrigins: readonly string[];
}

/** Sign-in with e-mail address and password. Nobody signs up: people are entered by the maker. */
export function createAuth(database: Database, { secret, origin, trustedOrigins }: AuthSettings) {
  return betterAuth({
    appName: 'Flangewise',
    baseURL: origin,
    basePath: '/api/auth',
    secret,
    trustedOrigins: [...trustedOrigins],
    database: prismaAdapter(database, { provider: 'postgresql' }),
    emailAndPassword: { enabled: true, disableSignUp: true, minPasswordLength: 12 },
    user: {
      additionalFields: {
        role: { type: Object.values(Role), required: true, input: false },
        clientId: { type: 'string', required: false, input: false },
      },
    },
    // Counted in the database, so that several API processes count together. Attempts to sign in are counted by the hooks.
    rateLimit: { enabled: true, storage: 'database', customRules: { [signInPath]: false } },
    hooks: limitAttempts(database),
    advanced: { cookiePrefix: 'flangewise', ipAddress: { ipAddressHeaders: ['x-forwarded-for'] } },
    telemetry: { enabled: false },
    logger: { level: 'error' },
  });
}

export type Auth = ReturnType<typeof createAuth>;
