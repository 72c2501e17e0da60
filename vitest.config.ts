import { defineConfig } from 'vitest/config';

// All tests but those in a browser, which need a running product: tests/e2e has a configuration of its own.
export default defineConfig({ test: { projects: ['apps/*', 'libs/*', 'tests/vitest.config.ts'] } });
