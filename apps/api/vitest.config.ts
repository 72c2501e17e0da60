import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    name: 'api',
    include: ['src/**/*.test.ts'],
    globalSetup: ['src/embedded-database/test-server.ts'],
    testTimeout: 20_000,
    hookTimeout: 60_000,
  },
});
