'use client';

import type { SlotPath } from '@flangewise/model';
import type { MouseEvent } from 'react';
import { SectionDrawing, slotHref } from '../drawing/section-drawing';
import type { Scenes } from '../drawing/use-scenes';
import { useWidth } from '../drawing/use-width';

export interface CoverSheetProps {
  readonly scenes: Scenes;
  readonly selected: SlotPath | undefined;
  readonly onSelect: (path: SlotPath) => void;
}

/** From this width on the names of the parts beside the ports are 11 px or more. */
const seatsFrom = 520;

function Plan({ scenes, selected, onSelect }: CoverSheetProps) {
  const [holder, width] = useWidth<HTMLDivElement>();
  const { cover } = scenes;
  if (cover === undefined) return null;
  const hasSeats = width >= seatsFrom;
  return (
    <div ref={holder} className="min-h-[240px] min-w-0">
      {width > 0 && (
        <SectionDrawing
          scene={hasSeats ? cover.seats : cover.names}
          width={width}
          height={Math.round(hasSeats ? width * 0.74 : Math.min(width * 0.9, 360))}
          callouts="none"
          numbers={scenes.numbers}
          dimensions={false}
          selected={selected}
          onSelect={onSelect}
          idPrefix="cover-"
        />
      )}
    </div>
  );
}

/** Size, place and use of every port; a use leads to its slot. */
function Nozzles({ scenes, selected, onSelect }: CoverSheetProps) {
  const choose = (path: SlotPath) => (event: MouseEvent) => {
    event.preventDefault();
    onSelect(path);
  };
  return (
    <table className="tab">
      <caption className="sr-only">Ports of the cover</caption>
      <thead>
        <tr>
          <th scope="col">Port</th>
          <th scope="col">Size, mm</th>
          <th scope="col">Place</th>
          <th scope="col">Use</th>
        </tr>
      </thead>
      <tbody>
        {scenes.cover?.nozzles.map(({ name, size, place, use, slot }) => (
          <tr key={name} className={slot !== null && slot === selected ? 'bg-given-t' : undefined}>
            <th scope="row" className="py-1! text-[13px]! font-semibold! text-ink!">
              {name}
            </th>
            <td className="py-1! whitespace-nowrap">{size}</td>
            <td className="lab py-1!">{place}</td>
            <td className="py-1!">
              {slot === null ? (
                <span className="text-ink2">{use}</span>
              ) : (
                <a href={slotHref(slot)} onClick={choose(slot)}>
                  {use}
                </a>
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** The cover from above: who sits on which port, what is free, and what stands below. */
export function CoverSheet(props: CoverSheetProps) {
  if (props.scenes.cover === undefined) return null;
  return (
    <section aria-labelledby="cover-from-above" className="border-t border-hair px-4 py-3">
      <h2 id="cover-from-above" className="text-[13px] font-semibold">
        Cover from above
      </h2>
      <p className="lab">Front below. Dashed: seal, vessel, and what stands in it.</p>
      <div className="mt-2 grid items-start gap-x-6 gap-y-3 md:grid-cols-[minmax(0,1fr)_minmax(0,300px)]">
        <Plan {...props} />
        <Nozzles {...props} />
      </div>
    </section>
  );
}
