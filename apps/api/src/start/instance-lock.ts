import { randomUUID } from 'node:crypto';
import { linkSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, request, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { fail, succeed, type Outcome } from '@flangewise/model';
import { z } from 'zod';

const holderSchema = z.object({
  pid: z.int(),
  /** Loopback port on which the holder answers with its key as long as it lives. */
  port: z.int(),
  key: z.string(),
  /** Where the holder's product is reached, once known. */
  address: z.string().optional(),
});

export type Holder = z.infer<typeof holderSchema>;

/** A lock that ends with its holder, however that ends: a process number may be taken over, a listening port with its key not. */
export interface InstanceLock {
  readonly announce: (address: string) => void;
  readonly release: () => void;
}

function readHolder(file: string): Holder | undefined {
  try {
    return holderSchema.parse(JSON.parse(readFileSync(file, 'utf8')));
  } catch {
    return undefined;
  }
}

function isAlive(holder: Holder): Promise<boolean> {
  return new Promise((resolve) => {
    const asking = request({ host: '127.0.0.1', port: holder.port, path: '/', timeout: 2000 }, (response) => {
      let text = '';
      response.setEncoding('utf8').on('data', (part: string) => (text += part));
      response.on('end', () => resolve(text === holder.key));
    });
    asking.on('timeout', () => asking.destroy());
    asking.on('error', () => resolve(false));
    asking.end();
  });
}

function answerWith(key: string): Promise<Server> {
  const server = createServer((_, response) => response.end(key));
  return new Promise((resolve) => server.listen(0, '127.0.0.1', () => resolve(server.unref())));
}

function claim(draft: string, file: string): boolean {
  try {
    linkSync(draft, file);
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false;
    throw error;
  }
}

/** Takes the lock in `file`, or says who holds it. */
export async function takeLock(file: string): Promise<Outcome<InstanceLock, Holder>> {
  const key = randomUUID();
  const server = await answerWith(key);
  const { port } = server.address() as AddressInfo;
  const own: Holder = { pid: process.pid, port, key };
  const draft = `${file}.${key}`;
  for (;;) {
    // Written aside and linked, so that nobody reads half a lock.
    writeFileSync(draft, JSON.stringify(own));
    const taken = claim(draft, file);
    rmSync(draft);
    if (taken) break;
    const holder = readHolder(file);
    if (holder !== undefined && (await isAlive(holder))) {
      server.close();
      return fail(holder);
    }
    if (readHolder(file)?.key === holder?.key) rmSync(file, { force: true });
  }
  return succeed({
    announce: (address) => {
      writeFileSync(draft, JSON.stringify({ ...own, address }));
      renameSync(draft, file);
    },
    release: () => {
      server.close();
      if (readHolder(file)?.key === key) rmSync(file, { force: true });
    },
  });
}
