'use client';

import { type Item, type SlotName, slotNames, slots } from '@flangewise/model';
import { useId } from 'react';
import type { Wanted } from './find-parts';
import { isSlotName } from './range-rows';

export interface RangeFilterProps {
  readonly wanted: Wanted;
  readonly onWanted: (wanted: Wanted) => void;
  readonly families: readonly string[];
  readonly materials: readonly string[];
  readonly lives: readonly Item['life'][];
  /** "12 of 604 parts". */
  readonly count: string;
}

interface ChoiceProps {
  readonly label: string;
  readonly all: string;
  readonly value: string | undefined;
  readonly options: readonly (readonly [value: string, title: string])[];
  readonly onValue: (value: string | undefined) => void;
}

function Choice({ label, all, value, options, onValue }: ChoiceProps) {
  const id = useId();
  return (
    <div className="min-w-0">
      <label htmlFor={id} className="lab block">
        {label}
      </label>
      <select
        id={id}
        className="field mt-1"
        value={value ?? ''}
        onChange={({ target }) => onValue(target.value === '' ? undefined : target.value)}
      >
        <option value="">{all}</option>
        {options.map(([one, title]) => (
          <option key={one} value={one}>
            {title}
          </option>
        ))}
      </select>
    </div>
  );
}

const same = (values: readonly string[]) => values.map((value) => [value, value] as const);

/** Words and values, slot, family, material and life: what the table shows. */
export function RangeFilter({ wanted, onWanted, families, materials, lives, count }: RangeFilterProps) {
  const id = useId();
  return (
    <div className="mb-2 grid grid-cols-2 gap-3 md:grid-cols-[minmax(0,2fr)_repeat(4,minmax(0,1fr))_auto] md:items-end">
      <label className="lab col-span-2 md:col-span-1" htmlFor={id}>
        Number, name or value
        <input
          id={id}
          type="search"
          className="field mt-1"
          placeholder="VS-1002, or bore 130 1.4404"
          autoComplete="off"
          value={wanted.text}
          onChange={({ target }) => onWanted({ ...wanted, text: target.value })}
        />
      </label>
      <Choice
        label="Slot"
        all="every slot"
        value={wanted.slot}
        options={slotNames.map((name) => [name, slots[name].title])}
        onValue={(slot) =>
          onWanted({
            ...wanted,
            slot: slot !== undefined && isSlotName(slot) ? (slot satisfies SlotName) : undefined,
          })
        }
      />
      <Choice
        label="Family"
        all="every family"
        value={wanted.family}
        options={same(families)}
        onValue={(family) => onWanted({ ...wanted, family })}
      />
      <Choice
        label="Wetted material"
        all="every material"
        value={wanted.material}
        options={same(materials)}
        onValue={(material) => onWanted({ ...wanted, material })}
      />
      <Choice
        label="Life"
        all="at every stage"
        value={wanted.life}
        options={same(lives)}
        onValue={(life) => onWanted({ ...wanted, life: lives.find((one) => one === life) })}
      />
      <p
        role="status"
        className="col-span-2 text-ink2 md:col-span-1 md:min-w-[110px] md:pb-1.5 md:text-right"
      >
        {count}
      </p>
    </div>
  );
}
