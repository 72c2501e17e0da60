import { configDefaults, defineConfig } from 'vitest/config';

/** The folder whose changes are judged, by its own tests alone; every folder where none is named. */
const folder = process.env['MUTATION_FOLDER'] ?? '**';

/**
 * The tests that a mutation run repeats for every mutant: without those that load the whole registry, the second
 * opinion in Python and the slow integrals of saturation, and with few random samples. Nothing in the library keeps state
 * between tests, so modules are loaded once a run.
 */
export default defineConfig({
  resolve: { alias: { 'fast-check': new URL('mutation-random.config.ts', import.meta.url).pathname } },
  test: {
    include: [`src/${folder}/*.test.ts`],
    exclude: [
      ...configDefaults.exclude,
      'src/{dimensions,every-input,evidence,handbook,registry,second-opinion}.test.ts',
      'src/gas/saturation.test.ts',
    ],
    isolate: false,
    // A test that is slow on a busy machine must not count as one that noticed something.
    testTimeout: 120_000,
  },
});
