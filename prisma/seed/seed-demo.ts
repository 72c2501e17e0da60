import type { PrismaClient } from '../../apps/api/src/generated/client.js';
import { demoClients } from './demo-clients.js';
import { demoPeople } from './demo-people.js';

/**
 * Enters the demo into a database in which nobody can sign in yet, whole or not at all; leaves every other database alone.
 *
 * @param passwordHash of the password with which all people of the demo sign in
 * @returns whether the demo was entered now
 */
export async function seedDemo(database: PrismaClient, passwordHash: string): Promise<boolean> {
  return database.$transaction(async (step) => {
    // One starter at a time: the second finds the people of the first.
    await step.$executeRaw`LOCK TABLE "User" IN EXCLUSIVE MODE`;
    if ((await step.user.count()) > 0) return false;
    await step.client.createMany({ data: [...demoClients] });
    await step.user.createMany({ data: demoPeople.map((person) => ({ ...person, emailVerified: true })) });
    await step.account.createMany({
      data: demoPeople.map(({ id }) => ({
        id: `${id}-password`,
        accountId: id,
        providerId: 'credential',
        userId: id,
        password: passwordHash,
      })),
    });
    return true;
  });
}
