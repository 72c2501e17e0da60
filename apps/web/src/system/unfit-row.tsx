'use client';

import type { SlotPath } from '@flangewise/model';
import { useState } from 'react';
import type { SlotOption } from '../engine/protocol';
import { priceDifferenceText } from '../figures/price';
import { withChange, withChoice } from './edit-system';
import { Repairs } from './repairs';
import { useAnswer } from './use-view';
import type { Workbench } from './workbench';

export interface UnfitRowProps {
  readonly bench: Workbench;
  readonly path: SlotPath;
  readonly option: SlotOption;
}

/** Why this option does not fit, in sentences with numbers, and what would let it in. */
function Reasons({ bench, path, option }: UnfitRowProps) {
  const { client, document, change } = bench;
  const ask = { document, path, option: option.id };
  const key = `${path} ${option.id ?? 'none'} ${JSON.stringify(document)}`;
  const objection = useAnswer(`object ${key}`, (signal) => client.ask('object', ask, signal));
  const mending = useAnswer(`mend ${key}`, (signal) => client.ask('mend', ask, signal));
  if (objection === undefined) return <p className="lab">Looking for the reason …</p>;
  if (!objection.ok) return null;
  const taken = withChoice(document, path, option.id);
  return (
    <>
      {objection.value.reasons.slice(0, 3).map((reason) => (
        <p key={reason} className="say-sm">
          {reason}
        </p>
      ))}
      {mending === undefined && <p className="lab">Looking for what frees it …</p>}
      {mending?.ok === true && mending.value.repairs.length > 0 && (
        <Repairs
          bench={bench}
          base={taken}
          answer={mending.value}
          onTake={(repair) => change(withChange(taken, repair, mending.value))}
        />
      )}
      {mending !== undefined && (
        <button type="button" className="btn btn-sm mt-1.5" onClick={() => change(taken)}>
          Take it all the same
        </button>
      )}
    </>
  );
}

/** An option that does not lead to a valid whole with the other choices. */
export function UnfitRow({ bench, path, option }: UnfitRowProps) {
  const [open, setOpen] = useState(false);
  const { currency } = bench;
  return (
    <tr className="text-ink2">
      <td />
      <td colSpan={currency === undefined ? 1 : 2}>
        <span className="flex justify-between gap-3">
          {option.name}
          {currency !== undefined && option.priceDifference !== null && (
            <span className="whitespace-nowrap">{priceDifferenceText(option.priceDifference, currency)}</span>
          )}
        </span>
        {open && (
          <div className="text-ink">
            <Reasons bench={bench} path={path} option={option} />
          </div>
        )}
      </td>
      <td colSpan={2} className="num">
        <button
          type="button"
          className="btn-link"
          aria-expanded={open}
          aria-label={`${open ? 'Close: why not' : 'Why not'} ${option.name}`}
          onClick={() => setOpen(!open)}
        >
          {open ? 'close' : 'why not'}
        </button>
      </td>
    </tr>
  );
}
