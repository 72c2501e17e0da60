import type { ReactNode } from 'react';

function Cell({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  return (
    <div className="min-w-0 border-ink px-2.5 pt-1 pb-1.5 not-first:border-l-[.7px] max-md:not-first:border-l-0">
      <span className="lab block truncate">{label}</span>
      {children}
    </div>
  );
}

export interface TitleBlockProps {
  readonly name: string;
  readonly title: string;
  readonly note: string;
  /** Undefined for those who see no prices. */
  readonly price: { readonly list: string; readonly text: string } | undefined;
  readonly delivery: { readonly text: string; readonly longest: string };
  readonly margin: { readonly text: string; readonly title: string; readonly className: string };
  readonly revision: { readonly text: string; readonly note: string; readonly action?: ReactNode };
}

const big = 'block truncate text-total font-semibold';
const small = 'block truncate text-[12px] leading-4 text-ink2';

/** System, price, delivery, least margin and revision, at the foot of the sheet. */
export function TitleBlock({ name, title, note, price, delivery, margin, revision }: TitleBlockProps) {
  return (
    <div
      className={`grid grid-cols-2 gap-y-1 border-t-[1.4px] border-ink bg-sheet ${price === undefined ? 'md:grid-cols-[2fr_1fr_1fr_1fr]' : 'md:grid-cols-[2fr_1fr_1fr_1fr_1fr]'}`}
    >
      <Cell label={`System ${name}`}>
        <span className="block truncate text-[15px] leading-[22px] font-semibold" title={title}>
          {title}
        </span>
        <span className={small}>{note}</span>
      </Cell>
      {price !== undefined && (
        <Cell label="Price">
          <span className={big}>{price.text}</span>
          <span className={small}>{price.list}</span>
        </Cell>
      )}
      <Cell label="Delivery">
        <span className={big}>{delivery.text}</span>
        <span className={small} title={delivery.longest}>
          {delivery.longest}
        </span>
      </Cell>
      <Cell label="Least margin">
        <span className={`${big} ${margin.className}`}>{margin.text}</span>
        <span className={small} title={margin.title}>
          {margin.title}
        </span>
      </Cell>
      <Cell label="Revision">
        <span className={big}>{revision.text}</span>
        <span className={small}>
          {revision.note} {revision.action}
        </span>
      </Cell>
    </div>
  );
}
