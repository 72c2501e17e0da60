import { readdirSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const buildsKept = 2;
const holdPrefix = 'used-by-';

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    // Somebody else's process runs all the same.
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}

/**
 * Keeps a build from being removed while this process runs.
 *
 * @returns what to call when it may be removed
 */
export function holdBuild(place: string): () => void {
  const mark = join(place, `${holdPrefix}${process.pid}`);
  writeFileSync(mark, '');
  utimesSync(place, new Date(), new Date());
  return () => rmSync(mark, { force: true });
}

function isHeld(place: string): boolean {
  const marks = readdirSync(place).filter((name) => name.startsWith(holdPrefix));
  return marks.some((name) => isRunning(Number(name.slice(holdPrefix.length))));
}

/** Removes all builds of the folder that nobody runs, but the most recently used. */
export function removeOldBuilds(folder: string): void {
  const builds = readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => join(folder, entry.name))
    .sort((a, b) => statSync(b).mtimeMs - statSync(a).mtimeMs);
  for (const place of builds.slice(buildsKept))
    if (!isHeld(place)) rmSync(place, { recursive: true, force: true });
}
