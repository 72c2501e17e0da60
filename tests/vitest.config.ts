import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    name: 'tests',
    include: ['{acceptance,reference,regression,run,solver}/**/*.test.ts'],
    testTimeout: 60_000,
  },
});
