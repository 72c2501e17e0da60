import { describe, expect, it } from 'vitest';
import { table } from './table.js';
import { hanging } from './wrap.js';

describe('table', () => {
  it('aligns columns to their widest cell, numbers to the right', () => {
    const text = table(
      [{ title: 'Name' }, { title: 'Price', align: 'right' }, { title: 'Note' }],
      [
        ['a', '5', 'short'],
        ['longer', '1234', ''],
      ],
      80,
    );
    expect(text).toBe(['  Name    Price  Note', '  a           5  short', '  longer   1234'].join('\n'));
  });

  it('breaks the last column between words under itself', () => {
    const text = table(
      [{ title: '' }, { title: '' }],
      [['a', 'one two three four five six seven eight']],
      30,
    );
    expect(text).toBe(['  a  one two three four five', '     six seven eight'].join('\n'));
  });

  it('lets the widest column give way and keeps numbers whole', () => {
    const text = table(
      [{ title: 'Chosen' }, { title: 'Used', align: 'right' }, { title: 'May be' }],
      [['one two three four five six seven', '1234567890', 'an even longer text than the first of the row']],
      50,
    );
    expect(text.split('\n').every((line) => line.length <= 50)).toBe(true);
    expect(text).toContain('1234567890');
  });

  it('counts the spaces that keep number and unit together as one ordinary space', () => {
    expect(table([{ title: '' }, { title: '' }], [['60\u2009\u2060bar', 'x']], 40)).toBe('  60 bar  x');
  });
});

describe('hanging', () => {
  it('indents every further line as far as the lead', () => {
    expect(hanging('  - ', 'one two three four five six seven', 30)).toBe(
      ['  - one two three four five', '    six seven'].join('\n'),
    );
  });
});
