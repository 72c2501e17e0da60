import { type ItemField, type ItemShape, itemShapeOf, type SlotName } from '@flangewise/model';

/** A field where it stands on a page: its words without those of the section that it stands in. */
export interface LaidField {
  /** Within several, with [] for which of them. */
  readonly path: string;
  readonly label: string;
  readonly field: ItemField;
}

export interface LayoutSection {
  readonly title: string;
  /** Path of what stands in it; empty for the fields of the item itself. */
  readonly path: string;
  readonly fields: readonly LaidField[];
  /** Whether there may be several, each with these fields. */
  readonly isSeveral: boolean;
}

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** What a field says of itself beyond its words; undefined where that is the same. */
export const hintOf = ({ label, field }: Pick<LaidField, 'label' | 'field'>): string | undefined =>
  field.description?.toLowerCase() === label.toLowerCase() ? undefined : field.description;

/** "geometry inner diameter" in the section "geometry" → "Inner diameter". */
const within = (label: string, section: string): string =>
  capital(label.startsWith(`${section} `) ? label.slice(section.length + 1).replace(/^# /, '') : label);

const fieldsOf = (shape: ItemShape): readonly ItemField[] => {
  switch (shape.is) {
    case 'field':
      return [shape.field];
    case 'group':
      return shape.parts.flatMap(([, part]) => fieldsOf(part));
    case 'several':
      return fieldsOf(shape.each);
  }
};

const wordsOfKey = (key: string): string => key.replaceAll(/([a-z\d])([A-Z])/g, '$1 $2').toLowerCase();

const sectionOf = ([key, shape]: readonly [string, ItemShape]): LayoutSection => {
  const title = wordsOfKey(key);
  return {
    title: capital(title),
    path: key,
    isSeveral: shape.is === 'several',
    fields: fieldsOf(shape).map((field) => ({ path: field.path, label: within(field.label, title), field })),
  };
};

const layouts = new Map<SlotName, readonly LayoutSection[]>();

/** The fields of the items of a slot in sections, those of the item itself first. */
export const layoutOf = (slot: SlotName): readonly LayoutSection[] => {
  const known = layouts.get(slot);
  if (known !== undefined) return known;
  const shape = itemShapeOf(slot);
  const parts = shape.is === 'group' ? shape.parts.filter(([key]) => key !== 'slot') : [];
  const own = parts.flatMap(([, part]) => (part.is === 'field' ? [part.field] : []));
  const layout = [
    {
      title: 'In general',
      path: '',
      isSeveral: false,
      fields: own.map((field) => ({ path: field.path, label: capital(field.label), field })),
    },
    ...parts.filter(([, part]) => part.is !== 'field').map(sectionOf),
  ];
  layouts.set(slot, layout);
  return layout;
};

/** Path of a field of one of several: `ports[].name` of the third → `ports[2].name`. */
export const pathAt = (path: string, index: number): string => path.replace('[]', `[${String(index)}]`);
