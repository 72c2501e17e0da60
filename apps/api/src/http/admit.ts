import { type Role, roleTitles } from '../auth/roles.js';
import { refuse } from '../errors/refusal.js';
import type { Person } from '../trpc/context.js';

/** Whoever is signed in and has one of these roles; refuses everybody else, as a procedure does. */
export function admit(person: Person | undefined, roles: readonly Role[]): Person {
  if (person === undefined) throw refuse('SIGN_IN_REQUIRED', {});
  if (roles.includes(person.role)) return person;
  const allowed = roles.map((role) => roleTitles[role]).join(', ');
  throw refuse('ROLE_NOT_ALLOWED', { allowed, given: roleTitles[person.role] });
}
