import { createProjectGraphAsync } from '@nx/devkit';
import { ESLint } from 'eslint';
import { beforeAll, expect, it } from 'vitest';
import { checkout } from '../run/command.js';

const lint = new ESLint({ cwd: checkout });

beforeAll(async () => {
  process.env['NX_DAEMON'] = 'false';
  process.chdir(checkout);
  await createProjectGraphAsync();
});

/** The rules that a file with this text would break. */
async function brokenRules(file: string, text: string): Promise<readonly string[]> {
  const [result] = await lint.lintText(`${text}\n`, { filePath: `${checkout}${file}` });
  return (result?.messages ?? []).map((message) => message.ruleId ?? message.message);
}

const boundaries = '@nx/enforce-module-boundaries';

it.each([
  ['libs/solver/src/index.ts', `export { succeed } from '@flangewise/model';`],
  ['libs/quantities/src/index.ts', `export { succeed } from '@flangewise/model';`],
  ['libs/model/src/index.ts', `export * from '@flangewise/engineering';`],
  ['libs/engineering/src/index.ts', `export * from '@flangewise/catalogue';`],
  ['libs/catalogue/src/index.ts', `export * from '@flangewise/solver';`],
  ['libs/constraints/src/index.ts', `export * from '@flangewise/quotation';`],
  ['libs/quotation/src/index.ts', `export * from '@flangewise/engineering';`],
  ['libs/documents/src/index.ts', `export * from '@flangewise/constraints';`],
  ['libs/model/src/index.ts', `export type { AppRouter } from '@flangewise/api';`],
  ['apps/web/src/api/client.ts', `export * from '@flangewise/solver';`],
  ['apps/web/src/api/client.ts', `export * from '@flangewise/engineering';`],
  ['apps/api/src/index.ts', `export * from '../../web/src/api/client.js';`],
])('refuses in %s: %s', async (file, text) => {
  expect(await brokenRules(file, text)).toContain(boundaries);
});

it.each([
  ['libs/engineering/src/index.ts', `export { succeed } from '@flangewise/model';`],
  ['apps/api/src/index.ts', `export { succeed } from '@flangewise/model';`],
])('allows in %s: %s', async (file, text) => {
  expect(await brokenRules(file, text)).toEqual([]);
});

it('refuses a way around by relative path', async () => {
  const text = `export * from '../../quantities/src/index.js';`;
  expect(await brokenRules('libs/model/src/index.ts', text)).toContain(boundaries);
});

it.each([
  ['libs/model/src/index.ts', `export const home = process.env['HOME'];`, 'no-restricted-globals'],
  ['libs/model/src/index.ts', `export const now = new Date();`, 'no-restricted-syntax'],
  ['libs/model/src/index.ts', `export * from '@prisma/client';`, '@typescript-eslint/no-restricted-imports'],
  [
    'apps/web/src/api/client.ts',
    `export * from '@prisma/client';`,
    '@typescript-eslint/no-restricted-imports',
  ],
  [
    'apps/web/src/api/client.ts',
    `export * from '@flangewise/api';`,
    '@typescript-eslint/no-restricted-imports',
  ],
  [
    'apps/web/src/api/client.ts',
    `export * from '@flangewise/documents';`,
    '@typescript-eslint/no-restricted-imports',
  ],
  ['libs/engineering/src/index.ts', `export * from 'react';`, '@typescript-eslint/no-restricted-imports'],
])('refuses in %s: %s', async (file, text, rule) => {
  expect(await brokenRules(file, text)).toContain(rule);
});

it('allows the web the type of the router', async () => {
  const text = `import type { AppRouter } from '@flangewise/api';\nexport type Router = AppRouter;`;
  expect(await brokenRules('apps/web/src/api/client.ts', text)).toEqual([]);
});
