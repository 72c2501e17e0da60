import { expect, it } from 'vitest';
import { keepLast } from './keep-last.js';

it('makes each once, and forgets what nobody asked for longest', () => {
  const kept = keepLast<string>(2);
  const made: string[] = [];
  const ask = (key: string): string =>
    kept.get(key, () => {
      made.push(key);
      return `value of ${key}`;
    });
  expect(['a', 'b', 'a', 'c', 'a'].map(ask)).toEqual([
    'value of a',
    'value of b',
    'value of a',
    'value of c',
    'value of a',
  ]);
  expect(made).toEqual(['a', 'b', 'c']);
  ask('b');
  expect(made).toEqual(['a', 'b', 'c', 'b']);
});

it('makes again what it was told to forget, also where what was made is undefined', () => {
  const kept = keepLast<undefined>(2);
  let made = 0;
  const ask = () => kept.get('a', () => void made++);
  ask();
  ask();
  expect(made).toBe(1);
  kept.forget('a');
  ask();
  expect(made).toBe(2);
});
