'use client';

import type { SlotPath } from '@flangewise/model';
import type { ReactNode } from 'react';
import { DrawingStyle, SectionDrawing } from '../drawing/section-drawing';
import { SheetFrame } from '../drawing/sheet-frame';
import type { Scenes } from '../drawing/use-scenes';
import { useWidth } from '../drawing/use-width';
import { Empty } from '../look/notice';
import { CoverSheet } from './cover-sheet';
import { NotDrawn } from './not-drawn';
import { SlotList } from './slot-list';
import type { SlotRow } from './slot-rows';

export type SheetView = 'drawing' | 'list';

export interface DrawingSheetProps {
  readonly scenes: Scenes;
  readonly rows: readonly SlotRow[];
  readonly selected: SlotPath | undefined;
  readonly onSelect: (path: SlotPath) => void;
  readonly nameOf: (id: string | null | undefined) => string;
  readonly view: SheetView;
  readonly onView: (view: SheetView) => void;
  readonly tabs: ReactNode;
  readonly titleBlock: ReactNode;
}

/** Below this width callouts would be smaller than 11 px: numbers take their place. */
const calloutsFrom = 720;
/** Below this the drawing is cropped to the vessel. */
const wholeFrom = 560;

function Drawing({
  scenes,
  selected,
  onSelect,
}: Pick<DrawingSheetProps, 'scenes' | 'selected' | 'onSelect'>) {
  const [holder, width] = useWidth<HTMLDivElement>();
  const scene = width < wholeFrom ? scenes.detail : scenes.section;
  const height = Math.round(width < wholeFrom ? width * 1.02 : Math.max(560, Math.min(700, width * 0.76)));
  return (
    <div ref={holder} style={{ minHeight: 320 }}>
      {scene === undefined ? (
        <div className="p-6">
          <Empty text="No vessel is chosen yet; the drawing begins with it." />
        </div>
      ) : (
        width > 0 && (
          <SectionDrawing
            scene={scene}
            width={width}
            height={height}
            callouts={width < calloutsFrom ? 'numbers' : 'columns'}
            numbers={scenes.numbers}
            dimensions={width >= wholeFrom}
            selected={selected}
            onSelect={onSelect}
            idPrefix="section-"
          />
        )
      )}
    </div>
  );
}

/** The system on a sheet: the section as the form, or the plain list of its slots. */
export function DrawingSheet(props: DrawingSheetProps) {
  const { scenes, rows, selected, onSelect, nameOf, view, onView, tabs, titleBlock } = props;
  return (
    <SheetFrame>
      <DrawingStyle />
      <div className="flex flex-wrap items-center justify-between gap-x-4">
        <div className="min-w-0 grow">{tabs}</div>
        <div role="group" aria-label="Show as" className="flex px-2 py-1 max-sm:hidden">
          {(['drawing', 'list'] as const).map((one) => (
            <button
              key={one}
              type="button"
              aria-pressed={view === one}
              className={`btn btn-sm btn-q capitalize ${view === one ? 'font-semibold underline decoration-2 underline-offset-4' : 'text-ink2!'}`}
              onClick={() => onView(one)}
            >
              {one}
            </button>
          ))}
        </div>
      </div>
      {view === 'drawing' ? (
        <>
          <Drawing scenes={scenes} selected={selected} onSelect={onSelect} />
          <div className="px-4 pb-3 max-sm:hidden">
            <NotDrawn rows={rows} drawn={scenes.drawn} selected={selected} onSelect={onSelect} />
          </div>
          <CoverSheet scenes={scenes} selected={selected} onSelect={onSelect} />
          <div className="border-t border-hair sm:hidden">
            <SlotList rows={rows} selected={selected} nameOf={nameOf} onSelect={onSelect} />
          </div>
        </>
      ) : (
        <SlotList rows={rows} selected={selected} nameOf={nameOf} onSelect={onSelect} />
      )}
      {titleBlock}
    </SheetFrame>
  );
}
