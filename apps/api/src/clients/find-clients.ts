import type { Desk } from '../trpc/context.js';

/** Every client that was ever named, by name, and whether anybody of it signs in. */
export async function findClients({ database }: Desk) {
  const rows = await database.client.findMany({
    orderBy: { name: 'asc' },
    select: { name: true, _count: { select: { users: true } } },
  });
  return rows.map(({ name, _count }) => ({ name, hasPeople: _count.users > 0 }));
}
