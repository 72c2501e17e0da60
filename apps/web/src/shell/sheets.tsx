import Link from 'next/link';

/** The sheets of one job, in the order in which they are worked. */
export const sheets = ['Inquiry', 'Candidates', 'System', 'Offer'] as const;
export type Sheet = (typeof sheets)[number];

/** Where each sheet of a job is; undefined while it does not exist yet. */
export type SheetLinks = Readonly<Partial<Record<Sheet, string | undefined>>>;

const shape =
  'relative flex items-center gap-1.5 px-2 md:px-3 no-underline whitespace-nowrap [font-stretch:94%]';
/** A way that can be taken, and the one that was. */
export const sheetShape = `${shape} text-ink2 hover:text-ink`;
export const sheetShapeCurrent = `${shape} font-semibold text-ink after:absolute after:inset-x-2 after:bottom-0 after:h-[3px] after:bg-ink md:after:inset-x-3`;

export function Sheets({ current, links }: { readonly current: Sheet; readonly links: SheetLinks }) {
  return (
    <nav aria-label="Sheets of this job" className="flex min-h-12 items-stretch self-stretch overflow-x-auto">
      {sheets.map((sheet, index) => {
        const href = links[sheet];
        const body = (
          <>
            <span className="max-md:hidden font-medium">{index + 1}</span>
            {sheet}
          </>
        );
        if (sheet === current)
          return (
            <a key={sheet} href={href ?? '#main'} aria-current="page" className={sheetShapeCurrent}>
              {body}
            </a>
          );
        return href === undefined ? (
          <span key={sheet} className={`${shape} text-ink2 opacity-70`} aria-disabled="true">
            {body}
          </span>
        ) : (
          <Link key={sheet} href={href} className={sheetShape}>
            {body}
          </Link>
        );
      })}
    </nav>
  );
}
