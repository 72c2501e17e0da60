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
}

/**
 * Counts the tests of a report. A test that was skipped proves nothing, and a file that did not load hides its tests: both
 * count as failed, as does a run that failed although no test did, or that ran none.
 *
 * @param report text of the report; undefined when there is none
 * @param exitCode of the run
 */
export function countTests(report: string | undefined, exitCode: number): Count {
  if (report === undefined) return { passed: 0, failures: ['the run ended without a report'] };
  const files = reportSchema.parse(JSON.parse(report)).testResults;
  const tests = files.flatMap((file) => file.assertionResults.map((test) => ({ ...test, file: file.name })));
  const passed = tests.filter((test) => test.status === 'passed').length;
  const failures = tests
    .filter((test) => test.status !== 'passed')
    .map((test) => `${test.status}: ${test.file} > ${test.fullName}`);
  const unloaded = files
    .filter(
      (file) => file.status !== 'passed' && file.assertionResults.every((test) => test.status === 'passed'),
    )
    .map((file) => `not run: ${file.name}: ${(file.message ?? '').split('\n')[0] ?? ''}`);
  const all = [...failures, ...unloaded];
  if (all.length === 0 && passed === 0) return { passed, failures: ['no test ran'] };
  if (all.length === 0 && exitCode !== 0)
    return { passed, failures: ['an error outside of any test, see above'] };
  return { passed, failures: all };
}
