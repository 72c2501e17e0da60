import type { ReactNode } from 'react';

const zoneLetters = ['A', 'B', 'C', 'D', 'E'];
const zoneNumbers = [1, 2, 3, 4, 5, 6];

/** Border of a drawing sheet with its zones; the content stands inside the heavy line. */
export function SheetFrame({ children }: { readonly children: ReactNode }) {
  const zone = 'text-center text-[9px] leading-[13px] font-medium text-ink2 border-rule';
  return (
    <div className="border border-rule bg-sheet max-sm:border-0">
      <div className="hidden grid-cols-6 px-[13px] sm:grid" aria-hidden="true">
        {zoneNumbers.map((number) => (
          <span key={number} className={`${zone} border-l first:border-l-0`}>
            {number}
          </span>
        ))}
      </div>
      <div className="grid sm:grid-cols-[13px_minmax(0,1fr)_13px]">
        {(['left', 'right'] as const).map((side) => (
          <div
            key={side}
            className={`hidden grid-rows-5 sm:grid ${side === 'left' ? 'order-1' : 'order-3'}`}
            aria-hidden="true"
          >
            {zoneLetters.map((letter) => (
              <span key={letter} className={`${zone} grid content-center border-t first:border-t-0`}>
                {letter}
              </span>
            ))}
          </div>
        ))}
        <div className="order-2 min-w-0 border-[1.4px] border-ink max-sm:border-0">{children}</div>
      </div>
      <div className="hidden h-[13px] grid-cols-6 px-[13px] sm:grid" aria-hidden="true">
        {zoneNumbers.map((number) => (
          <span key={number} className={`${zone} border-l first:border-l-0`} />
        ))}
      </div>
    </div>
  );
}
