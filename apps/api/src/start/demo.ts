import { hashPassword, verifyPassword } from 'better-auth/crypto';
import { demoPeople } from '../../../../prisma/seed/demo-people.js';
import { seedDemo } from '../../../../prisma/seed/seed-demo.js';
import type { Role } from '../auth/roles.js';
import { openDatabase } from '../database/client.js';

export interface SignIn {
  readonly email: string;
  readonly role: Role;
}

/**
 * Enters the demo into an empty database.
 *
 * @returns the people of the demo who sign in with this password; none where the database has other people, or the demo was
 *   entered with the password of another data folder
 */
export async function prepareDemo(url: string, password: string): Promise<readonly SignIn[]> {
  const database = openDatabase(url);
  try {
    await seedDemo(database, await hashPassword(password));
    const accounts = await database.account.findMany({
      where: { userId: { in: demoPeople.map((person) => person.id) } },
      select: { userId: true, password: true },
    });
    const hashes = new Map(accounts.map((account) => [account.userId, account.password]));
    const hash = accounts[0]?.password;
    if (hash === null || hash === undefined || !(await verifyPassword({ hash, password }))) return [];
    return demoPeople.filter((person) => hashes.get(person.id) === hash);
  } finally {
    await database.$disconnect();
  }
}
