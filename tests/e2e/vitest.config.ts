import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    name: 'e2e',
    root: fileURLToPath(new URL('.', import.meta.url)),
    include: ['**/*.test.ts'],
    globalSetup: ['./product.ts'],
    // The machine is shared by the product, the browser and its pages.
    fileParallelism: false,
    testTimeout: 300_000,
    hookTimeout: 60_000,
  },
});
