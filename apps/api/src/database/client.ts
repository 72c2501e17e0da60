import { PrismaPg } from '@prisma/adapter-pg';
import { PrismaClient } from '../generated/client.js';

export type Database = PrismaClient;

/** How long a transaction waits for a connection, and after which it is undone: others may hold the rows that it needs. */
const connectionWaitMs = 10_000;
const transactionLimitMs = 30_000;

/** A pool of connections to the database at `url`; connects on first use, closed by `$disconnect()`. */
export function openDatabase(url: string): Database {
  return new PrismaClient({
    adapter: new PrismaPg({ connectionString: url }),
    transactionOptions: { maxWait: connectionWaitMs, timeout: transactionLimitMs },
  });
}
