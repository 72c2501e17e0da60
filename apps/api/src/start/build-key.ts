import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';

/** Made, not written: never part of a key. */
const made = new Set(['node_modules', '.next', 'dist', 'coverage', 'generated', 'next-env.d.ts']);

function filesBelow(path: string): readonly string[] {
  return readdirSync(path, { withFileTypes: true })
    .filter((entry) => !made.has(entry.name) && !/\.(test|spec)\.tsx?$/.test(entry.name))
    .flatMap((entry) =>
      entry.isDirectory() ? filesBelow(join(path, entry.name)) : [join(path, entry.name)],
    );
}

/** A key that changes with any source of the web: its own files, the libraries, and the versions of all packages. */
export function webBuildKey(checkout: string): string {
  const hash = createHash('sha256').update(process.versions.node);
  const files = ['apps/web', 'libs'].flatMap((folder) => filesBelow(join(checkout, folder)));
  for (const file of [...files, join(checkout, 'package-lock.json')].sort()) {
    const content = readFileSync(file);
    hash.update(`\n${relative(checkout, file).replaceAll('\\', '/')} ${content.length}\n`).update(content);
  }
  return hash.digest('hex').slice(0, 16);
}
