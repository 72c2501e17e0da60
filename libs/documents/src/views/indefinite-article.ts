/** "an" before a number that is spoken with a vowel first (8, 11, 18, 80, 8 000, 11 000), else "a". */
export const indefiniteArticle = (text: string): 'a' | 'an' => {
  const whole = /^[\d\s\u2060]+/u.exec(text)?.[0].replace(/\D/g, '') ?? '';
  const first = whole.slice(0, ((whole.length + 2) % 3) + 1);
  return /^(?:8\d*|11|18)$/.test(first) ? 'an' : 'a';
};
