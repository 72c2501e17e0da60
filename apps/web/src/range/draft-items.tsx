'use client';

import { type Item, type SlotName, slotNames, slots } from '@flangewise/model';
import { useState } from 'react';
import { errorText, reasonOf } from '../api/api-error';
import { Drawer } from '../look/drawer';
import { Fault } from '../look/notice';
import { ItemForm } from './item-form';
import { freeNumber, type ItemTexts, textsOf } from './item-texts';
import type { ListPrices } from './list-prices';
import { RangeBrowser } from './range-browser';
import { isSlotName } from './range-rows';
import type { Mark } from './range-table';
import { useDraft } from './use-draft';
import type { Revision } from './use-revision';

/** What is being written: an item of the draft, or one that is not there yet. */
interface Editing {
  readonly slot: SlotName;
  readonly texts: ItemTexts;
  readonly isNew: boolean;
}

export interface DraftItemsProps {
  readonly revision: Revision;
  readonly lists: readonly ListPrices[];
  readonly marks: ReadonlyMap<string, Mark>;
}

/** Chooses the slot of a new item. */
function NewItem({ onSlot }: { readonly onSlot: (slot: SlotName) => void }) {
  return (
    <label className="lab">
      New item in the slot
      <select
        className="field mt-1"
        value=""
        onChange={({ target }) => {
          if (isSlotName(target.value)) onSlot(target.value);
        }}
      >
        <option value="">choose one</option>
        {slotNames.map((name) => (
          <option key={name} value={name}>
            {slots[name].title}
          </option>
        ))}
      </select>
    </label>
  );
}

interface ActionsProps {
  readonly item: Item;
  readonly isBusy: boolean;
  /** What was done with it last. */
  readonly done: string;
  readonly onEdit: () => void;
  readonly onCopy: () => void;
  readonly onRemove: () => void;
}

function ItemActions({ item, isBusy, done, onEdit, onCopy, onRemove }: ActionsProps) {
  const [isAsked, setAsked] = useState(false);
  return (
    <div className="mb-4 flex flex-wrap items-center gap-2">
      <p role="status" className="basis-full empty:hidden">
        {done}
      </p>
      <button type="button" className="btn btn-ink" onClick={onEdit}>
        Change it
      </button>
      <button type="button" className="btn" onClick={onCopy}>
        Make one like it
      </button>
      {isAsked ? (
        <>
          <span className="say-sm">
            Offers and systems keep it. To say that it is no longer sold, set its life to discontinued
            instead.
          </span>
          <button type="button" className="btn" disabled={isBusy} onClick={onRemove}>
            Take {item.id} out of the draft
          </button>
          <button type="button" className="btn btn-q" onClick={() => setAsked(false)}>
            Keep it
          </button>
        </>
      ) : (
        <button type="button" className="btn" onClick={() => setAsked(true)}>
          Take it out
        </button>
      )}
    </div>
  );
}

/** The items of an open draft: looked at, changed, added, taken out. */
export function DraftItems({ revision, lists, marks }: DraftItemsProps) {
  const { items } = revision.catalogue;
  const [editing, setEditing] = useState<Editing>();
  const [saved, setSaved] = useState<string>();
  const [gone, setGone] = useState('');
  const { saveItem, removeItem } = useDraft(revision.id);
  const failed = saveItem.error ?? removeItem.error;
  const begin = (next: Editing): void => {
    saveItem.reset();
    removeItem.reset();
    setSaved(undefined);
    setGone('');
    setEditing(next);
  };
  const save = (item: Item, prices: Readonly<Record<string, string>>): void =>
    saveItem.mutate(
      { item, prices },
      {
        onSuccess: () => {
          setEditing(undefined);
          setSaved(item.id);
          location.hash = item.id;
        },
      },
    );
  const remove = ({ id }: Item): void =>
    removeItem.mutate(id, {
      onSuccess: ({ troubles }) =>
        setGone([`${id} is taken out of the draft.`, ...troubles.map(({ message }) => message)].join(' ')),
    });
  const fault = failed !== null && (
    <div className="mb-3">
      <Fault
        text={errorText(failed)}
        action={
          reasonOf(failed) === undefined
            ? undefined
            : { title: 'Load the draft again', run: () => location.reload() }
        }
      />
    </div>
  );
  return (
    <>
      <div className="mb-4 flex flex-wrap items-end justify-between gap-3">
        <div className="w-56">
          <NewItem onSlot={(slot) => begin({ slot, texts: { id: freeNumber(items, slot) }, isNew: true })} />
        </div>
        <p role="status" className="text-ink2">
          {gone}
        </p>
      </div>
      {editing === undefined && fault}
      <RangeBrowser
        items={items}
        lists={lists}
        marks={marks}
        actions={(item) => (
          <ItemActions
            item={item}
            isBusy={removeItem.isPending}
            done={saved === item.id ? `${item.id} is saved in the draft.` : ''}
            onEdit={() => begin({ slot: item.slot, texts: textsOf(item), isNew: false })}
            onCopy={() =>
              begin({
                slot: item.slot,
                texts: { ...textsOf(item), id: freeNumber(items, item.slot) },
                isNew: true,
              })
            }
            onRemove={() => remove(item)}
          />
        )}
      />
      {editing !== undefined && (
        <Drawer
          title={editing.isNew ? `New item, ${slots[editing.slot].title}` : (editing.texts['name'] ?? '')}
          onClose={() => setEditing(undefined)}
        >
          {fault}
          <ItemForm
            key={`${editing.slot} ${editing.texts['id'] ?? ''} ${String(editing.isNew)}`}
            slot={editing.slot}
            initial={editing.texts}
            isNew={editing.isNew}
            taken={new Set(items.map(({ id }) => id))}
            lists={lists}
            isBusy={saveItem.isPending}
            onSave={save}
            onLeave={() => setEditing(undefined)}
          />
        </Drawer>
      )}
    </>
  );
}
