import { expect, it } from 'vitest';
import { countTests } from './count.js';

const file = (status: string, ...tests: string[]): object => ({
  name: 'a.test.ts',
  status,
  message: status === 'passed' ? '' : 'cannot load\nat line 1',
  assertionResults: tests.map((one, index) => ({ fullName: `test ${index}`, status: one })),
});

const report = (...files: object[]): string => JSON.stringify({ testResults: files });

it('counts what passed', () => {
  expect(countTests(report(file('passed', 'passed', 'passed'), file('passed', 'passed')), 0)).toEqual({
    passed: 3,
    failures: [],
  });
});

it.each(['failed', 'skipped', 'pending', 'todo'])('counts a %s test as failed', (status) => {
  const count = countTests(report(file('failed', 'passed', status)), 0);
  expect(count).toEqual({ passed: 1, failures: [`${status}: a.test.ts > test 1`] });
});

it('counts a file that did not load as failed', () => {
  const count = countTests(report(file('failed'), file('passed', 'passed')), 1);
  expect(count).toEqual({ passed: 1, failures: ['not run: a.test.ts: cannot load'] });
});

it.each([
  { run: 'a run without a report', text: undefined, exitCode: 1, failure: 'the run ended without a report' },
  { run: 'a run without tests', text: report(), exitCode: 0, failure: 'no test ran' },
  {
    run: 'an error outside of any test',
    text: report(file('passed', 'passed')),
    exitCode: 1,
    failure: 'an error outside of any test, see above',
  },
])('counts $run as failed', ({ text, exitCode, failure }) => {
  expect(countTests(text, exitCode).failures).toEqual([failure]);
});
