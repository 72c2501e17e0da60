'use client';

import { allowedPrice, type Item, readPrice, type SlotName, slots } from '@flangewise/model';
import { useId, useMemo, useState } from 'react';
import { Refused } from '../look/notice';
import { StatusMark } from '../look/status-mark';
import { ItemInput } from './item-fields';
import { type LayoutSection, layoutOf, pathAt } from './item-layout';
import { countIn, type ItemTexts, readTexts, withoutOne } from './item-texts';
import type { ListPrices } from './list-prices';

export interface ItemFormProps {
  readonly slot: SlotName;
  readonly initial: ItemTexts;
  readonly isNew: boolean;
  /** Numbers that other items have. */
  readonly taken: ReadonlySet<string>;
  readonly lists: readonly ListPrices[];
  readonly isBusy: boolean;
  /** Prices by list; an empty text takes one out. */
  readonly onSave: (item: Item, prices: Readonly<Record<string, string>>) => void;
  readonly onLeave: () => void;
}

interface SeveralProps {
  readonly section: LayoutSection;
  readonly form: Parameters<typeof ItemInput>[0]['form'];
  readonly onTexts: (texts: ItemTexts) => void;
}

/** Parts of which an item may have several, a line each. */
function SeveralInputs({ section, form, onTexts }: SeveralProps) {
  const { path: list, fields, title } = section;
  const [least, setLeast] = useState(0);
  const count = Math.max(least, countIn(form.texts, list));
  const remove = (index: number): void => {
    setLeast(Math.max(0, count - 1));
    onTexts(withoutOne(form.texts, { list, index }));
  };
  return (
    <>
      {count > 0 && (
        <div className="relative overflow-x-auto">
          <table className="tab">
            <thead>
              <tr>
                {fields.map(({ path, label, field }) => (
                  <th key={path} scope="col" className="min-w-24">
                    {label}
                    {field.unit === undefined ? '' : `, ${field.unit.label}`}
                  </th>
                ))}
                <th scope="col">
                  <span className="sr-only">Take out</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {Array.from({ length: count }, (_, i) => (
                <tr key={i}>
                  {fields.map(({ path, label, field }) => (
                    <td key={path}>
                      <ItemInput
                        isCell
                        path={pathAt(path, i)}
                        label={`${title} ${String(i + 1)}, ${label}`}
                        field={field}
                        form={form}
                      />
                    </td>
                  ))}
                  <td>
                    <button
                      type="button"
                      className="btn btn-sm"
                      aria-label={`Take out ${title.toLowerCase()} ${String(i + 1)}`}
                      onClick={() => remove(i)}
                    >
                      Take out
                    </button>
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
      <button type="button" className="btn btn-sm mt-2" onClick={() => setLeast(count + 1)}>
        Add one more
      </button>
    </>
  );
}

interface PriceInputProps {
  readonly list: ListPrices;
  readonly text: string;
  readonly onText: (text: string) => void;
}

function PriceInput({ list, text, onText }: PriceInputProps) {
  const id = useId();
  const isRefused = text.trim() !== '' && readPrice(text) === undefined;
  return (
    <div className="min-w-0">
      <label htmlFor={id} className="lab mb-1 block">
        {list.id}, {list.currency}
      </label>
      <input
        id={id}
        className="field"
        inputMode="decimal"
        autoComplete="off"
        value={text}
        aria-invalid={isRefused || undefined}
        aria-describedby={isRefused ? `${id}-trouble` : undefined}
        onChange={({ target }) => onText(target.value)}
      />
      {isRefused && <Refused id={`${id}-trouble`} text={allowedPrice(list)} />}
    </div>
  );
}

/** Fields of one item, made from its schema; what is wrong is said while it is typed. */
export function ItemForm({ slot, initial, isNew, taken, lists, isBusy, onSave, onLeave }: ItemFormProps) {
  const [texts, setTexts] = useState(initial);
  const [touched, setTouched] = useState<ReadonlySet<string>>(new Set());
  const [isAsked, setAsked] = useState(false);
  const number = texts['id'] ?? '';
  const [prices, setPrices] = useState<Readonly<Record<string, string>>>(() =>
    Object.fromEntries(lists.map((list) => [list.id, list.of[number] ?? ''])),
  );
  const read = useMemo(() => readTexts(slot, texts), [slot, texts]);
  const isTaken = isNew && taken.has(number.trim());
  const all: Readonly<Record<string, string>> = {
    ...(read.ok ? {} : read.troubles),
    ...(isTaken ? { id: 'another item has this number; give one that is free' } : {}),
  };
  const told = Object.fromEntries(Object.entries(all).filter(([path]) => isAsked || touched.has(path)));
  const wrongPrices = lists.filter(({ id }) => {
    const text = prices[id] ?? '';
    return text.trim() !== '' && readPrice(text) === undefined;
  });
  const wrong = Object.keys(all).length + wrongPrices.length;
  const form = {
    texts,
    troubles: told,
    isNew,
    onText: (path: string, text: string) => {
      setTexts((before) => ({ ...before, [path]: text }));
      setTouched((before) => new Set(before).add(path));
    },
  };
  const save = (): void => {
    setAsked(true);
    if (!read.ok || wrong > 0) return;
    const amounts = Object.entries(prices).map(([id, text]) => [
      id,
      text.trim() === '' ? '' : (readPrice(text) ?? ''),
    ]);
    onSave(read.item, Object.fromEntries(amounts) as Readonly<Record<string, string>>);
  };
  return (
    <form
      aria-label={`Fields of ${isNew ? 'the new item' : number}, ${slots[slot].title}`}
      className="mt-4 grid grid-cols-1 gap-5"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        save();
      }}
    >
      {layoutOf(slot).map((section) => (
        <section key={section.path} className="sec">
          <h3 className="mb-2">{section.title}</h3>
          {section.isSeveral ? (
            <SeveralInputs section={section} form={form} onTexts={setTexts} />
          ) : (
            <div className="grid grid-cols-1 gap-3 sm:grid-cols-2">
              {section.fields.map(({ path, label, field }) => (
                <ItemInput key={path} path={path} label={label} field={field} form={form} />
              ))}
            </div>
          )}
        </section>
      ))}
      <section className="sec">
        <h3 className="mb-2">List prices</h3>
        <div className="grid grid-cols-1 gap-3 sm:grid-cols-2">
          {lists.map((list) => (
            <PriceInput
              key={list.id}
              list={list}
              text={prices[list.id] ?? ''}
              onText={(text) => setPrices((before) => ({ ...before, [list.id]: text }))}
            />
          ))}
        </div>
      </section>
      <div className="sticky -bottom-5 -mx-6 -mb-5 flex flex-wrap items-center gap-3 border-t border-rule bg-sheet px-6 py-3">
        <button type="submit" className="btn btn-ink" disabled={isBusy}>
          Save in the draft
        </button>
        <button type="button" className="btn" onClick={onLeave} disabled={isBusy}>
          Leave it
        </button>
        <p role="status" className="min-w-0">
          {isAsked && wrong > 0 && (
            <>
              <StatusMark status="not met" label="refused" />{' '}
              {wrong === 1 ? 'One field cannot be used yet.' : `${String(wrong)} fields cannot be used yet.`}
            </>
          )}
        </p>
      </div>
    </form>
  );
}
