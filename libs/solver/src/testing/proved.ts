import type { Answer } from '../answers.js';

/** The value of a proved answer; anything else fails the test. */
export function proved<T>(answer: Answer<T>): T {
  if (answer.status !== 'proved') throw new Error(`not proved: ${answer.reason}`);
  return answer.value;
}
