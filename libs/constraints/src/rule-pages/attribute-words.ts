import { itemShapeOf, type SlotName } from '@flangewise/model';

const spaced = (key: string): string => key.replace(/[A-Z]/gu, (letter) => ` ${letter.toLowerCase()}`);

/** An attribute of the items of a slot as their schema words it, with the unit in which it is read. */
export const attributeWords = (slot: SlotName, key: string): string => {
  const shape = itemShapeOf(slot);
  const part = shape.is === 'group' ? shape.parts.find(([name]) => name === key)?.[1] : undefined;
  const field =
    part?.is === 'field'
      ? part.field
      : part?.is === 'several' && part.each.is === 'field'
        ? part.each.field
        : undefined;
  if (field === undefined) return spaced(key);
  const words = field.description ?? field.label.replace(/ #.*$/u, '');
  const lower = /^[A-Z][a-z]/u.test(words) ? `${words.charAt(0).toLowerCase()}${words.slice(1)}` : words;
  return field.unit === undefined ? lower : `${lower} [${field.unit.label}]`;
};
