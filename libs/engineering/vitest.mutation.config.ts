import { configDefaults, defineConfig } from 'vitest/config';

/** The tests that a mutation run repeats for every mutant: quick ones, and the same on every run. */
export default defineConfig({
  test: {
    include: ['src/**/*.test.ts'],
    exclude: [
      ...configDefaults.exclude,
      'src/{dimensions,every-input,evidence,handbook,registry,second-opinion}.test.ts',
    ],
  },
});
