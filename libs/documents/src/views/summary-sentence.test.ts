import { expect, it } from 'vitest';
import { sampleOffer } from '../fixtures/sample-offer.js';
import { summarySentence } from './summary-sentence.js';

const sentence = (nominalVolumeL: number): string => {
  const { system, items } = sampleOffer();
  const changed = new Map(
    [...items].map(([id, item]) => [id, item.slot === 'vessel' ? { ...item, nominalVolumeL } : item]),
  );
  const single = { ...system, sets: system.sets.slice(0, 1).map((set) => ({ ...set, count: 1 })) };
  return summarySentence(single, changed).replace(/[\u2009\u2060]+/g, ' ');
};

it.each([
  [8, 'An 8 L stirred pressure reactor for '],
  [18, 'An 18 L stirred pressure reactor for '],
  [0.08, 'An 80 mL stirred pressure reactor for '],
  [5, 'A 5 L stirred pressure reactor for '],
])('a vessel of %d L', (volume, expected) => {
  expect(sentence(volume)).toContain(expected);
});
