import { createServer } from 'node:net';

const host = '127.0.0.1';

function listen(port: number): Promise<number | undefined> {
  return new Promise((resolve) => {
    const server = createServer();
    server.once('error', () => resolve(undefined));
    server.listen({ port, host, exclusive: true }, () => {
      const address = server.address();
      server.close(() => resolve(typeof address === 'object' && address !== null ? address.port : undefined));
    });
  });
}

/** A loopback port that nobody listens on at this moment. */
export async function freePort(): Promise<number> {
  const port = await listen(0);
  if (port === undefined) throw new Error('the system has no free port on 127.0.0.1');
  return port;
}

/** Whether a program could listen on this loopback port now. */
export async function isFree(port: number): Promise<boolean> {
  return (await listen(port)) !== undefined;
}
