import { z } from 'zod';
import type { Auth } from '../auth/auth.js';
import { Role } from '../auth/roles.js';
import type { Database } from '../database/client.js';
import type { Workshop } from '../workshop/workshop.js';
import type { Workshops } from '../workshop/workshops.js';

const personSchema = z.object({
  id: z.string(),
  name: z.string(),
  email: z.string(),
  role: z.enum(Role),
  clientId: z
    .string()
    .nullish()
    .transform((id) => id ?? null),
});

/** Who is signed in. */
export type Person = z.infer<typeof personSchema>;

/** What every procedure is given. */
export interface Context {
  readonly database: Database;
  /** The catalogue in force when the request came, and what is computed over it. */
  readonly workshop: Workshop;
  readonly workshops: Workshops;
  /** Undefined when nobody is signed in. */
  readonly person: Person | undefined;
  /** Number under which the log has this request. */
  readonly request: string;
}

/** What a service is given: the procedure has seen to it that somebody is signed in and may ask. */
export interface Desk {
  readonly database: Database;
  readonly workshop: Workshop;
  readonly person: Person;
}

export async function findPerson(auth: Auth, headers: Headers): Promise<Person | undefined> {
  const session = await auth.api.getSession({ headers });
  return session === null ? undefined : personSchema.parse(session.user);
}

/** The same for what has to do with catalogues, in force or not. */
export interface CatalogueDesk {
  readonly database: Database;
  readonly workshops: Workshops;
  readonly person: Person;
}
