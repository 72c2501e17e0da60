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
    skipped: [],
  });
});

it.each(['failed', 'skipped', 'pending', 'todo'])('counts a %s test as failed', (status) => {
  const count = countTests(report(file('failed', 'passed', status)), 0);
  expect(count).toEqual({ passed: 1, failures: [`${status}: a.test.ts > test 1`], skipped: [] });
});

it('counts apart a test that was skipped for want of what its title names', () => {
  const title = 'the library (needs python3-fluids) gives the same';
  const named = (status: string): string =>
    report({
      name: 'a.test.ts',
      status: 'passed',
      assertionResults: [
        { fullName: title, status },
        { fullName: 'adds', status: 'passed' },
      ],
    });
  const line = `a.test.ts > ${title}`;
  expect(countTests(named('skipped'), 0)).toEqual({ passed: 1, failures: [], skipped: [`skipped: ${line}`] });
  expect(countTests(named('todo'), 0)).toEqual({ passed: 1, failures: [`todo: ${line}`], skipped: [] });
  expect(countTests(named('failed'), 1)).toEqual({ passed: 1, failures: [`failed: ${line}`], skipped: [] });
});

it('counts a file that did not load as failed', () => {
  const count = countTests(report(file('failed'), file('passed', 'passed')), 1);
  expect(count).toEqual({ passed: 1, failures: ['not run: a.test.ts: cannot load'], skipped: [] });
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
