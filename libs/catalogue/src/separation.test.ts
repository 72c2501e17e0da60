import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { describe, expect, test } from 'vitest';
import { demoCatalogue } from './demo-catalogue.js';
import { priceLists } from './prices.js';

const bundle = async (entry: string): Promise<{ inputs: readonly string[]; text: string }> => {
  const result = await build({
    entryPoints: [fileURLToPath(new URL(entry, import.meta.url))],
    bundle: true,
    write: false,
    metafile: true,
    platform: 'browser',
    format: 'esm',
    minify: true,
    logLevel: 'silent',
  });
  return { inputs: Object.keys(result.metafile.inputs), text: result.outputFiles[0]!.text };
};

describe('items without prices', () => {
  test('the main entry reaches no price list, and no price is in its bundle', async () => {
    const { inputs, text } = await bundle('./index.ts');
    expect(inputs.filter((i) => i.includes('price-list') || i.endsWith('/prices.ts'))).toEqual([]);
    expect(text).toContain('VS-1001');
    for (const list of priceLists) expect(text).not.toContain(list.id);
    expect(demoCatalogue.priceLists).toEqual([]);
  }, 60_000);

  test('the price entry holds the lists', async () => {
    const { inputs, text } = await bundle('./prices.ts');
    expect(inputs.some((i) => i.includes('price-list'))).toBe(true);
    for (const list of priceLists) expect(text).toContain(list.id);
  }, 60_000);
});
