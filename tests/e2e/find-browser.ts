import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { chromium } from 'playwright-core';
import { checkout, runCommand } from '../run/command.js';

const names = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome'];

const installerLimitMs = 180_000;

/** Whether this is a program that starts. */
function works(file: string): boolean {
  return existsSync(file) && spawnSync(file, ['--version'], { timeout: 20_000 }).status === 0;
}

function installed(): string | undefined {
  const onPath = (process.env['PATH'] ?? '')
    .split(delimiter)
    .flatMap((folder) => names.map((name) => join(folder, name)));
  const chosen = process.env['CHROMIUM'];
  return [...(chosen === undefined ? [] : [chosen]), ...onPath, chromium.executablePath()].find(works);
}

/** Lets the browser library fetch the build that it was made for; it gives up soon where nothing can be fetched. */
function fetchBuild(): void {
  console.log('No Chromium found; fetching one …');
  const command = join(checkout, 'node_modules', 'playwright-core', 'cli.js');
  spawnSync(process.execPath, [command, 'install', '--no-shell', 'chromium'], {
    stdio: 'inherit',
    timeout: installerLimitMs,
    env: { ...process.env, PLAYWRIGHT_DOWNLOAD_CONNECTION_TIMEOUT: '10000' },
  });
}

async function installPackage(): Promise<void> {
  if (process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return;
  console.log('Installing the system’s Chromium …');
  await runCommand('apt-get', ['update']);
  await runCommand('env', [
    'DEBIAN_FRONTEND=noninteractive',
    ...['apt-get', 'install', '-y', '--no-install-recommends', 'chromium', 'fonts-liberation'],
  ]);
}

/** Path of a Chromium that starts: one that is installed, else one that is fetched, else the system's package. */
export async function findBrowser(): Promise<string> {
  const found = installed();
  if (found !== undefined) return found;
  fetchBuild();
  const fetched = installed();
  if (fetched !== undefined) return fetched;
  await installPackage();
  const packaged = installed();
  if (packaged !== undefined) return packaged;
  throw new Error(
    'The tests in the browser need Chromium, and none was found, fetched or installed. Install it with your system ' +
      '(Debian: apt-get install chromium), or name one that you have: CHROMIUM=/path/to/chromium npm test',
  );
}
