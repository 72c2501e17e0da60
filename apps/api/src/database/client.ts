import { PrismaPg } from '@prisma/adapter-pg';
import { PrismaClient } from '../generated/client.js';

export type Database = PrismaClient;

/** A pool of connections to the database at `url`; connects on first use, closed by `$disconnect()`. */
export function openDatabase(url: string): Database {
  return new PrismaClient({ adapter: new PrismaPg({ connectionString: url }) });
}
