import { z } from 'zod';

/** What is read of the report that vitest writes with its JSON reporter. */
const reportSchema = z.object({
  testResults: z.array(
    z.object({
      name: z.string(),
      status: z.string(),
      message: z.string().optional(),
      assertionResults: z.array(z.object({ fullName: z.string(), status: z.string() })),
    }),
  ),
});

export interface Count {
  readonly passed: number;
  /** One line for each failure. */
  readonly failures: readonly string[];
  /** One line for each test that could not run because what it names in its title is not installed. */
  readonly skipped: readonly string[];
}

/** What a test's title says it needs from outside: `the library fluids (needs python3-fluids)`. */
const need = /\(needs [^)]+\)/;

/**
 * Counts the tests of a report. A test may be skipped where its title names what it needs and that is not installed; any
 * other skipped test proves nothing, and a file that did not load hides its tests: both count as failed, as does a run
 * that failed although no test did, or that ran none.
 *
 * @param report text of the report; undefined when there is none
 * @param exitCode of the run
 */
export function countTests(report: string | undefined, exitCode: number): Count {
  const failed = (failure: string): Count => ({ passed: 0, failures: [failure], skipped: [] });
  if (report === undefined) return failed('the run ended without a report');
  const files = reportSchema.parse(JSON.parse(report)).testResults;
  const tests = files.flatMap((file) => file.assertionResults.map((test) => ({ ...test, file: file.name })));
  const passed = tests.filter((test) => test.status === 'passed').length;
  const isExcused = (test: (typeof tests)[number]): boolean =>
    ['skipped', 'pending'].includes(test.status) && need.test(test.fullName);
  const lineOf = (test: (typeof tests)[number]): string => `${test.status}: ${test.file} > ${test.fullName}`;
  const skipped = tests.filter(isExcused).map(lineOf);
  const failures = tests.filter((test) => test.status !== 'passed' && !isExcused(test)).map(lineOf);
  const unloaded = files
    .filter(
      ({ name, status }) => status !== 'passed' && !failures.some((line) => line.includes(`: ${name} > `)),
    )
    .map((file) => `not run: ${file.name}: ${(file.message ?? '').split('\n')[0] ?? ''}`);
  const all = [...failures, ...unloaded];
  if (all.length === 0 && passed === 0) return failed('no test ran');
  if (all.length === 0 && exitCode !== 0) {
    return { passed, failures: ['an error outside of any test, see above'], skipped };
  }
  return { passed, failures: all, skipped };
}
