'use client';

import { slots } from '@flangewise/model';
import { useState } from 'react';
import { CheckBar } from '../look/check-bar';
import { StatusMark, statusClass } from '../look/status-mark';
import { checkRowsOf } from '@flangewise/documents/drawings';
import { choiceIn, withChoice } from './edit-system';
import { OptionRow } from './option-row';
import type { SlotRow } from './slot-rows';
import { UnfitRow } from './unfit-row';
import { useOptions } from './use-options';
import type { Workbench } from './workbench';

export interface SlotPanelProps {
  readonly bench: Workbench;
  readonly row: SlotRow;
}

/** The check that decides the state of the slot: why first, then the number. */
function Reason({ row, bench }: SlotPanelProps) {
  const { worst, choice } = row;
  if (choice === undefined)
    return <p className="say">Nobody has chosen here yet. {slots[row.slot].description}.</p>;
  if (worst === undefined) return <p className="say text-ink2">{slots[row.slot].description}.</p>;
  const figures = checkRowsOf([worst], { numbers: bench.numbers, setName: () => null })[0];
  const calm = worst.status === 'met';
  return (
    <>
      <p className="say first-letter:uppercase">{worst.text}</p>
      {worst.utilisation !== undefined && figures !== undefined && (
        <div className="mt-2">
          <CheckBar status={worst.status} utilisation={worst.utilisation} width={420} height={20} />
          <p className="mt-0.5 flex justify-between gap-3 text-[11.5px] leading-4 text-ink2">
            <span>
              {worst.title}:{' '}
              <b className={`font-semibold ${calm ? 'text-ink' : statusClass(worst.status)}`}>
                {figures.demand}
              </b>{' '}
              of {figures.limit}
            </span>
            <span>{figures.margin}</span>
          </p>
        </div>
      )}
    </>
  );
}

/** The chosen slot: its verdict, and what else may stand there. */
export function SlotPanel({ bench, row }: SlotPanelProps) {
  const { document, change, currency, commercial } = bench;
  const options = useOptions(bench, row.path);
  const [unfitOpen, setUnfitOpen] = useState(false);
  const chosen = choiceIn(document, row.path);
  const group = `option-${row.path}`;
  const columns = currency === undefined ? 4 : 5;
  return (
    <section aria-labelledby="slot-title" className={bench.isCurrent ? '' : 'opacity-80'}>
      <div className="flex items-baseline gap-2.5">
        {row.number !== undefined && (
          <span
            className={`text-heading font-semibold ${row.status === undefined || row.status === 'met' ? '' : statusClass(row.status)}`}
          >
            {row.number}
          </span>
        )}
        <h1 id="slot-title" className="flex items-center gap-2">
          {row.title}
          {row.status !== undefined && row.choice !== undefined && <StatusMark status={row.status} />}
        </h1>
        <span className="grow" />
        <span className="lab">
          {row.fit === undefined ? '' : `${String(row.fit)} of ${String(row.options ?? 0)} options fit`}
        </span>
      </div>
      <div className="mt-1 mb-3">
        <Reason bench={bench} row={row} />
      </div>
      <table className="tab [&_td]:align-baseline">
        <thead>
          <tr>
            <td className="head w-[22px]" />
            <th scope="col" className="head text-[13px]! font-semibold! text-ink!">
              Options{row.number === undefined ? '' : ` for ${String(row.number)}`}
            </th>
            {currency !== undefined && (
              <th scope="col" className="head num w-[78px]">
                Price
              </th>
            )}
            <th scope="col" className="head num w-[64px]">
              Delivery
            </th>
            <th scope="col" className="head num w-[78px]">
              Least margin
            </th>
          </tr>
        </thead>
        <tbody>
          {options === undefined && (
            <tr>
              <td />
              <td colSpan={columns - 1} className="lab">
                Looking at the options …
              </td>
            </tr>
          )}
          {options?.fit.map((option) => (
            <OptionRow
              key={option.id ?? 'none'}
              option={option}
              group={group}
              isChosen={option.id === chosen}
              days={commercial?.days}
              currency={currency}
              onTake={() => change(withChoice(document, row.path, option.id))}
            />
          ))}
          {options?.fit.length === 0 && (
            <tr>
              <td />
              <td colSpan={columns - 1} className="say-sm">
                Nothing fits here with the other choices.
              </td>
            </tr>
          )}
          {options !== undefined && options.unfit.length > 0 && (
            <tr>
              <td />
              <td colSpan={columns - 1}>
                <button
                  type="button"
                  className="btn-link"
                  aria-expanded={unfitOpen}
                  onClick={() => setUnfitOpen(!unfitOpen)}
                >
                  {unfitOpen ? 'Hide' : 'Show'} {options.unfit.length} that{' '}
                  {options.unfit.length === 1 ? 'does' : 'do'} not fit
                </button>
              </td>
            </tr>
          )}
          {unfitOpen &&
            options?.unfit.map((option) => (
              <UnfitRow key={option.id ?? 'none'} bench={bench} path={row.path} option={option} />
            ))}
        </tbody>
      </table>
      {chosen !== undefined && (
        <button
          type="button"
          className="btn-link"
          onClick={() => change(withChoice(document, row.path, undefined))}
        >
          Leave it open
        </button>
      )}
    </section>
  );
}
