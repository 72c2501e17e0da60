'use client';

import type { Change, SystemInput } from '@flangewise/model';
import type { Mending, SystemView } from '../engine/protocol';
import { daysDifferenceText, priceDifferenceText } from '../figures/price';
import { touchesInquiry, withChange } from './edit-system';
import { useAnswer } from './use-view';
import type { Workbench } from './workbench';

/** Shown at once; the engine sorts the smallest first. */
const most = 5;

export interface RepairsProps {
  readonly bench: Workbench;
  /** The document that is to be mended. */
  readonly base: SystemInput;
  readonly answer: Mending;
  readonly onTake: (repair: Change) => void;
}

interface Effect {
  readonly price: number | undefined;
  readonly days: number | undefined;
}

const effectOf = (view: SystemView | undefined, { commercial }: Workbench): Effect => {
  const price = view?.commercial.listPrice ?? undefined;
  const now = commercial?.listPrice ?? undefined;
  return {
    price: price === undefined || now === undefined ? undefined : price - now,
    days: view === undefined || commercial === undefined ? undefined : view.commercial.days - commercial.days,
  };
};

function RepairRow({ bench, base, answer, repair, onTake }: RepairsProps & { readonly repair: Change }) {
  const tries = touchesInquiry(repair, answer);
  const document = withChange(base, repair, answer);
  const view = useAnswer(JSON.stringify(document), (signal) =>
    bench.client.ask('view', { document }, signal),
  );
  const { price, days } = effectOf(view?.ok === true ? view.value : undefined, bench);
  return (
    <tr>
      <td className="first-letter:uppercase">{repair.text}</td>
      {bench.currency !== undefined && (
        <td className="num w-[76px]">
          {price === undefined ? '' : priceDifferenceText(price, bench.currency)}
        </td>
      )}
      <td className="num w-[52px]">{days === undefined ? '' : daysDifferenceText(days)}</td>
      <td className="num w-[62px]">
        <button
          type="button"
          className={`btn btn-sm ${tries ? '' : 'btn-ink'}`}
          onClick={() => onTake(repair)}
          title={tries ? 'Alters what the client asked for; the client must agree' : undefined}
        >
          {tries ? 'Try' : 'Take'}
        </button>
      </td>
    </tr>
  );
}

/** Smallest changes that mend a conflict: "Take" decides, "Try" alters what the client asked for. */
export function Repairs(props: RepairsProps) {
  const { answer } = props;
  const shown = answer.repairs.slice(0, most);
  const tries = shown.some((repair) => touchesInquiry(repair, answer));
  return (
    <div className="my-2">
      <h3>{shown.length === 1 ? 'Smallest change that mends it' : 'Smallest changes that mend it'}</h3>
      <table className="tab [&_td]:border-t [&_td]:border-b-0">
        <thead className="sr-only">
          <tr>
            <th>Change</th>
            {props.bench.currency !== undefined && <th>Price</th>}
            <th>Delivery</th>
            <th>Take or try</th>
          </tr>
        </thead>
        <tbody>
          {shown.map((repair) => (
            <RepairRow key={repair.text} {...props} repair={repair} />
          ))}
        </tbody>
      </table>
      {tries && <p className="lab">“Try” alters what the client asked for: the client must agree.</p>}
    </div>
  );
}
