import { expect, it } from 'vitest';
import { alternateSystem, segmentSystem } from '../fixtures/sample-systems.js';
import { arrangeSheet } from './arrange-sheet.js';
import { drawingModelOf } from './drawing-model-of.js';
import { numberSystem } from './number-system.js';
import { sectionOf } from './section.js';

const sheet = { width: 900, height: 660, callouts: 'columns' } as const;

it('counts every slot of every set once, from 1 on', () => {
  const model = drawingModelOf(alternateSystem());
  const numbers = numberSystem(model);
  expect([...numbers.values()].toSorted((a, b) => a - b)).toEqual([...numbers.keys()].map((_, i) => i + 1));
  expect(new Set(numbers.keys())).toEqual(new Set(sectionOf(model)!.slots.map(({ path }) => path)));
});

it('counts on in the second set, and names what both share once', () => {
  const model = drawingModelOf(alternateSystem());
  const numbers = numberSystem(model);
  const own = (set: number): number[] =>
    [...numbers].flatMap(([path, number]) =>
      path.startsWith(`sets[${String(set)}].`) && !path.endsWith('.material') ? [number] : [],
    );
  const drawn = sectionOf(model, { set: 0 })!;
  const first = arrangeSheet(drawn, sheet).callouts.map(({ slot }) => slot.path);
  expect(first.map((path) => numbers.get(path))).toEqual(first.map((_, i) => i + 1));
  expect(Math.min(...own(1))).toBeGreaterThan(first.length);
});

it('has the numbers of the section where there is one set', () => {
  const model = drawingModelOf(segmentSystem());
  expect(numberSystem(model)).toEqual(arrangeSheet(sectionOf(model)!, sheet).numbers);
});
