import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { runCommand } from './command.js';
import { countTests, type Count } from './count.js';

// Everything that has to hold, one after the other, and the sum of it in the last line.

const reports = mkdtempSync(join(tmpdir(), 'flangewise-reports-'));

/** A check of the sources as a whole counts as one test. */
async function check(title: string, script: string): Promise<Count> {
  const code = await runCommand('npm', ['run', '--silent', script]);
  return code === 0
    ? { passed: 1, failures: [], skipped: [] }
    : { passed: 0, failures: [`${title}: npm run ${script}`], skipped: [] };
}

async function tests(name: string, args: readonly string[]): Promise<Count> {
  const file = join(reports, `${name}.json`);
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${file}`];
  const code = await runCommand('npx', ['vitest', 'run', ...args, ...reporters]);
  return countTests(existsSync(file) ? readFileSync(file, 'utf8') : undefined, code);
}

const steps: Readonly<Record<string, () => Promise<Count>>> = {
  format: () => check('format', 'format:check'),
  types: () => check('types', 'typecheck'),
  lint: () => check('lint', 'lint'),
  tests: () => tests('tests', []),
  'tests in the browser': () => tests('e2e', ['--config', 'tests/e2e/vitest.config.ts']),
};

const lines: string[] = [];
const failures: string[] = [];
const skipped: string[] = [];
let passed = 0;
for (const [title, step] of Object.entries(steps)) {
  console.log(`\n── ${title} ──`);
  const began = performance.now();
  const count = await step();
  const seconds = ((performance.now() - began) / 1000).toFixed(0);
  lines.push(
    `${title.padEnd(22)}${String(count.passed).padStart(6)} passed${String(count.failures.length).padStart(6)} failed${String(count.skipped.length).padStart(6)} skipped${seconds.padStart(6)} s`,
  );
  failures.push(...count.failures);
  skipped.push(...count.skipped);
  passed += count.passed;
}
rmSync(reports, { recursive: true, force: true });

console.log(`\n── summary ──\n${lines.join('\n')}`);
if (failures.length > 0) console.log(`\n${failures.join('\n')}`);
if (skipped.length > 0) {
  console.log(`\n${skipped.join('\n')}\n\n${skipped.length} skipped: what they need is not installed`);
}
console.log(`\n${passed} passed, ${failures.length} failed`);
process.exitCode = failures.length === 0 ? 0 : 1;
