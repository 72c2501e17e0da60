import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: { include: ['src/**/*.test.ts'], passWithNoTests: true, testTimeout: 60_000 },
});
