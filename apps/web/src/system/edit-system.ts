import {
  type Change,
  type ExplainAnswer,
  parseSlotPath,
  type SlotPath,
  type SystemInput,
} from '@flangewise/model';

type Choice = string | null | undefined;

const put = <T extends object>(choices: T, slot: string, choice: Choice): T => {
  const { [slot]: _before, ...others } = choices as Record<string, unknown>;
  return (choice === undefined ? others : { ...others, [slot]: choice }) as T;
};

/** The document with one slot chosen anew; undefined leaves it undecided. */
export const withChoice = (document: SystemInput, path: SlotPath, choice: Choice): SystemInput => {
  const parsed = parseSlotPath(path);
  if (parsed === undefined) return document;
  const { slot, set } = parsed;
  if (set === undefined) return { ...document, frame: put(document.frame ?? {}, slot, choice) };
  return {
    ...document,
    sets: (document.sets ?? []).map((one, i) =>
      i === set ? { ...one, choices: put(one.choices, slot, choice) } : one,
    ),
  };
};

/** What stands in a slot of the document: an item number, null for none, undefined while nobody has chosen. */
export const choiceIn = (document: Pick<SystemInput, 'frame' | 'sets'>, path: SlotPath): Choice => {
  const parsed = parseSlotPath(path);
  if (parsed === undefined) return undefined;
  return parsed.set === undefined
    ? document.frame?.[parsed.slot]
    : document.sets?.[parsed.set]?.choices[parsed.slot];
};

/** Figures are shown with spaces that never break; typed they have plain ones. */
const asTyped = (text: string): string =>
  text
    .replace(/\u2009\u2060(?=\d)/g, '')
    .replace(/[\u2009\u2060\s]+/g, ' ')
    .replace('1/min', 'rpm')
    .replace('−', '-')
    .trim();

type Json = Record<string, unknown> | unknown[];

const isJson = (value: unknown): value is Json => typeof value === 'object' && value !== null;

const keysOf = (path: string): (string | number)[] =>
  path.split('.').flatMap((part) => {
    const match = /^(\w+)\[(\d+)\]$/.exec(part);
    return match === null ? [part] : [match[1] ?? '', Number(match[2])];
  });

/** A copy with a field changed; undefined leaves it out. */
const written = (value: unknown, keys: readonly (string | number)[], next: unknown): unknown => {
  const [key, ...rest] = keys;
  if (key === undefined) return next;
  if (typeof key === 'number') {
    const list = Array.isArray(value) ? (value as unknown[]) : [];
    return list.map((one, i) => (i === key ? written(one, rest, next) : one));
  }
  const record = isJson(value) && !Array.isArray(value) ? value : {};
  if (rest.length > 0 || next !== undefined) return { ...record, [key]: written(record[key], rest, next) };
  const { [key]: _dropped, ...others } = record;
  return others;
};

const numberOrText = (text: string): string | number => {
  const typed = asTyped(text);
  return /^-?\d+(\.\d+)?$/.test(typed) ? Number(typed) : typed;
};

const withInquiryField = (document: SystemInput, path: string, to: string): SystemInput => ({
  ...document,
  inquiry: written(
    document.inquiry,
    keysOf(path),
    to === 'left open' ? (path.endsWith('media') ? [] : undefined) : numberOrText(to),
  ) as SystemInput['inquiry'],
});

const choiceFrom = (to: string): Choice => (to === 'left open' ? undefined : to === 'none' ? null : to);

/** `sets[0].material` is a slot and a wish of the inquiry: the conflict says which of them is meant. */
const isChoice = (change: Change['changes'][number], answer: Pick<ExplainAnswer, 'conflicts'>): boolean => {
  const statement = answer.conflicts
    .flatMap(({ statements }) => statements)
    .find(({ path, value }) => path === change.path && value === change.from);
  return statement === undefined ? parseSlotPath(change.path) !== undefined : statement.kind === 'choice';
};

/** Whether a change alters what the client said, and so needs the client's consent. */
export const touchesInquiry = (change: Change, answer: Pick<ExplainAnswer, 'conflicts'>): boolean =>
  change.changes.some((one) => !isChoice(one, answer));

/** The document with a proposed change made. */
export const withChange = (
  document: SystemInput,
  change: Change,
  answer: Pick<ExplainAnswer, 'conflicts'>,
): SystemInput =>
  change.changes.reduce(
    (changed, one) =>
      isChoice(one, answer)
        ? withChoice(changed, one.path as SlotPath, choiceFrom(one.to))
        : withInquiryField(changed, one.path, one.to),
    document,
  );
