import { plain, widthOf } from './plain.js';

/** Lines are never broken narrower than this. */
export const narrowest = 16;

/** Breaks a text into lines of at most `width` letters, between words. A longer word stands alone on its line. */
export const wrap = (text: string, width: number): readonly string[] => {
  const most = Math.max(width, narrowest);
  const lines: string[] = [];
  let line = '';
  for (const word of plain(text)
    .split(/\s+/)
    .filter((w) => w !== '')) {
    if (line !== '' && widthOf(line) + 1 + widthOf(word) > most) {
      lines.push(line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return line === '' ? lines : [...lines, line];
};

/** A paragraph with its own first indent and a hanging one: `hanging('- ', text, 80)`. */
export const hanging = (lead: string, text: string, columns: number): string => {
  const indent = ' '.repeat(widthOf(lead));
  const lines = wrap(text, columns - widthOf(lead));
  return lines.map((line, k) => `${k === 0 ? lead : indent}${line}`).join('\n');
};
