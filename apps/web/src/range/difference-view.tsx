import { type SlotName, slotNames, slots } from '@flangewise/model';
import type { ReactNode } from 'react';
import { exactPriceText } from '../figures/price';
import type { Comparison } from './use-revision';

/** What is told of a difference; an import tells the same of a file. */
export type Difference = Omit<Comparison, 'touchedOffers'>;

type Field = Difference['tables'][number];

/** Items of one kind of change that are shown before they are asked for. */
const shownFirst = 60;

export const isNothing = ({ added, removed, changed, prices, priceLists, tables }: Difference): boolean =>
  [added, removed, changed, prices, priceLists, tables].every((list) => list.length === 0);

const countText = (count: number, [one, more]: readonly [string, string]): string =>
  count === 1 ? `one ${one}` : `${String(count)} ${more}`;

/** "3 items changed, one new price" */
export const differenceText = ({
  added,
  removed,
  changed,
  prices,
  priceLists,
  tables,
}: Difference): string => {
  const parts = [
    [added.length, ['item added', 'items added']],
    [changed.length, ['item changed', 'items changed']],
    [removed.length, ['item taken out', 'items taken out']],
    [prices.length, ['other price', 'other prices']],
    [priceLists.length, ['price list', 'price lists']],
    [tables.length, ['line of the house rules', 'lines of the house rules']],
  ] as const;
  const told = parts.filter(([count]) => count > 0).map(([count, words]) => countText(count, words));
  return told.length === 0 ? 'No difference' : told.join(', ');
};

function FieldLine({ field }: { readonly field: Field }) {
  return (
    <div className="grid gap-x-3 py-0.5 sm:grid-cols-[minmax(0,220px)_minmax(0,1fr)]">
      <dt className="text-ink2 first-letter:uppercase">{field.label}</dt>
      <dd className="min-w-0 break-words">
        {field.before === null ? (
          <span className="text-ink2">nothing</span>
        ) : (
          <del className="text-ink2">{field.before}</del>
        )}
        <span aria-hidden="true"> → </span>
        <span className="sr-only"> becomes </span>
        {field.after === null ? (
          <span className="text-ink2">nothing</span>
        ) : (
          <ins className="font-medium no-underline">{field.after}</ins>
        )}
      </dd>
    </div>
  );
}

interface SectionProps {
  readonly title: string;
  readonly count: number;
  readonly children: ReactNode;
}

function Section({ title, count, children }: SectionProps) {
  if (count === 0) return null;
  return (
    <section className="sec">
      <div className="sec-head">
        <h2>{title}</h2>
        <span className="lab">{count}</span>
      </div>
      {children}
    </section>
  );
}

/** The first lines of a list, the rest behind a word. */
function Lines<T>({ all, line }: { readonly all: readonly T[]; readonly line: (one: T) => ReactNode }) {
  const rest = all.slice(shownFirst);
  return (
    <>
      <ul>{all.slice(0, shownFirst).map(line)}</ul>
      {rest.length > 0 && (
        <details>
          <summary className="btn-link">{rest.length} more</summary>
          <ul>{rest.map(line)}</ul>
        </details>
      )}
    </>
  );
}

interface Head {
  readonly id: string;
  readonly slot: SlotName;
  readonly name: string;
}

const bySlot = <T extends Head>(items: readonly T[]): readonly T[] =>
  slotNames.flatMap((slot) => items.filter((item) => item.slot === slot));

function ItemHead({ item }: { readonly item: Head }) {
  return (
    <p className="flex flex-wrap gap-x-3">
      <b className="w-16 font-semibold">{item.id}</b>
      <span className="font-medium">{item.name}</span>
      <span className="lab self-center">{slots[item.slot].title}</span>
    </p>
  );
}

const listWords = { added: 'is added', removed: 'is taken out', changed: 'has other terms' } as const;

/** Everything that two revisions have otherwise, field by field. */
export function DifferenceView({ difference }: { readonly difference: Difference }) {
  const { added, removed, changed, prices, priceLists, tables } = difference;
  return (
    <div className="grid grid-cols-1 gap-6">
      <Section title="Changed" count={changed.length}>
        <Lines
          all={bySlot(changed)}
          line={(item) => (
            <li key={item.id} className="row py-2">
              <ItemHead item={item} />
              <dl className="mt-1 sm:pl-[76px]">
                {item.fields.map((field) => (
                  <FieldLine key={field.path} field={field} />
                ))}
              </dl>
            </li>
          )}
        />
      </Section>
      <Section title="Added" count={added.length}>
        <Lines
          all={bySlot(added)}
          line={(item) => (
            <li key={item.id} className="row py-1.5">
              <ItemHead item={item} />
            </li>
          )}
        />
      </Section>
      <Section title="Taken out" count={removed.length}>
        <Lines
          all={bySlot(removed)}
          line={(item) => (
            <li key={item.id} className="row py-1.5">
              <ItemHead item={item} />
            </li>
          )}
        />
      </Section>
      <Section title="Prices" count={prices.length}>
        <Lines
          all={prices}
          line={({ id, name, priceList, currency, before, after }) => (
            <li
              key={`${priceList} ${id}`}
              className="row grid gap-x-3 py-1.5 sm:grid-cols-[64px_minmax(0,1fr)_auto]"
            >
              <b className="font-semibold">{id}</b>
              <span>
                {name} <span className="lab">{priceList}</span>
              </span>
              <span className="num">
                <del className="text-ink2">
                  {before === null ? 'not listed' : exactPriceText(before, currency)}
                </del>
                <span aria-hidden="true"> → </span>
                <span className="sr-only"> becomes </span>
                <ins className="font-medium no-underline">
                  {after === null ? 'not listed' : exactPriceText(after, currency)}
                </ins>
              </span>
            </li>
          )}
        />
      </Section>
      <Section title="Price lists" count={priceLists.length}>
        <ul>
          {priceLists.map(({ id, kind, fields }) => (
            <li key={id} className="row py-2">
              <p>
                <b className="font-semibold">{id}</b> {listWords[kind]}
              </p>
              <dl>
                {fields.map((field) => (
                  <FieldLine key={field.path} field={field} />
                ))}
              </dl>
            </li>
          ))}
        </ul>
      </Section>
      <Section title="House rules" count={tables.length}>
        <dl>
          {tables.map((field) => (
            <div key={field.path} className="row py-1">
              <FieldLine field={field} />
            </div>
          ))}
        </dl>
      </Section>
    </div>
  );
}
