import { fileURLToPath } from 'node:url';
import { pricedDemoCatalogue } from '@flangewise/catalogue/prices';
import { createAuth } from './auth/auth.js';
import { storeShippedRange } from './catalogue/store-shipped-range.js';
import { readConfig, type Config } from './config.js';
import { openDatabase } from './database/client.js';
import { createServer } from './http/server.js';
import { trustedOrigins } from './http/trusted-origins.js';
import { createWorkerPool } from './workshop/worker-pool.js';
import { createWorkshops } from './workshop/workshops.js';

/** One API process; any number may share a database. Tells its parent, if it has one, on which port it listens. */
async function serve(config: Config): Promise<void> {
  const { authSecret: secret, publicOrigin: origin, logLevel } = config;
  const database = openDatabase(config.databaseUrl);
  const trusted = trustedOrigins(origin);
  const auth = createAuth(database, { secret, origin, trustedOrigins: trusted });
  // Built beside this file; see start/build-api.ts.
  const pool = createWorkerPool(fileURLToPath(new URL('worker.mjs', import.meta.url)));
  await storeShippedRange(database, pricedDemoCatalogue);
  const workshops = createWorkshops(database, pool.run);
  // Opened before anybody asks.
  await workshops.current();
  const server = createServer({ database, auth, workshops, trustedOrigins: trusted, logLevel });

  const stop = async (): Promise<void> => {
    await server.close();
    await pool.close();
    await database.$disconnect();
    process.exit(0);
  };
  for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => void stop());
  process.once('disconnect', () => void stop());

  const address = await server.listen({ host: '127.0.0.1', port: config.port });
  process.send?.({ address });
}

const config = readConfig(process.env);
if (config.ok) await serve(config.value);
else {
  console.error(config.error);
  process.exitCode = 1;
}
