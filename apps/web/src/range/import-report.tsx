import type { Outputs } from '../api/client';
import { StatusMark } from '../look/status-mark';

export type Report = Outputs['catalogue']['importFile']['report'];

const countText = (count: number, [one, more]: readonly [string, string]): string =>
  count === 1 ? `one ${one}` : `${String(count)} ${more}`;

/** Everything that is in the way of a file, line by line. */
export function TroubleTable({ report, file }: { readonly report: Report; readonly file: string }) {
  const { troubles, furtherTroubles } = report;
  const total = troubles.length + furtherTroubles;
  const hasSheets = troubles.some(({ sheet }) => sheet !== undefined);
  return (
    <section className="sec" role="alert">
      <h2>
        <StatusMark status="not met" label="refused" /> {countText(total, ['thing is', 'things are'])} in the
        way of {file}. Nothing was changed.
      </h2>
      <p className="say-sm my-1">Mend the file and choose it again.</p>
      <div className="overflow-x-auto" tabIndex={0} role="group" aria-label="What is in the way, table">
        <table className="tab">
          <thead>
            <tr>
              {hasSheets && <th scope="col">Sheet</th>}
              <th scope="col" className="num w-14">
                Line
              </th>
              <th scope="col">Column</th>
              <th scope="col">Given</th>
              <th scope="col">What to do</th>
            </tr>
          </thead>
          <tbody>
            {troubles.map(({ sheet, line, column, given, message }, i) => (
              <tr key={i}>
                {hasSheets && <td className="whitespace-nowrap">{sheet}</td>}
                <td className="num">{line}</td>
                <td>{column}</td>
                <td className="font-medium break-words">{given}</td>
                <td className="first-letter:uppercase">{message}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {furtherTroubles > 0 && <p className="lab mt-2">{furtherTroubles} more are not listed.</p>}
    </section>
  );
}

/** What a file holds and does, in figures. */
export const reportText = ({ rows, added, changed, unchanged }: Report): string =>
  `${countText(rows, ['item', 'items'])} read: ${String(added)} new, ${String(changed)} changed, ${String(unchanged)} as before.`;
