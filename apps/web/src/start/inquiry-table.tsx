import Link from 'next/link';
import type { Outputs } from '../api/client';
import { momentText } from '../figures/moment';
import { InquiryState } from './inquiry-state';

type Row = Outputs['inquiries']['list'][number];

const countText = (count: number, one: string): string =>
  count === 0 ? 'none' : `${String(count)} ${one}${count === 1 ? '' : 's'}`;

/** Inquiries, those changed last first. On a narrow screen each row folds into lines. */
export function InquiryTable({ rows }: { readonly rows: readonly Row[] }) {
  const now = new Date();
  return (
    <table className="tab">
      <thead>
        <tr>
          <th className="w-20">Number</th>
          <th>Inquiry</th>
          <th className="max-md:hidden">Client</th>
          <th>State</th>
          <th className="num max-md:hidden">Systems</th>
          <th className="num max-md:hidden">Offers</th>
          <th className="num max-sm:hidden">Changed</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.id} className="relative hover:bg-given-t">
            <td className="font-semibold">{row.number}</td>
            <td>
              <Link
                href={`/inquiries/${row.id}`}
                className="font-medium text-ink no-underline after:absolute after:inset-0"
              >
                {row.title}
              </Link>
              <span className="lab block md:hidden">{row.client}</span>
            </td>
            <td className="text-ink2 max-md:hidden">{row.client}</td>
            <td>
              <InquiryState state={row.state} />
            </td>
            <td className="num text-ink2 max-md:hidden">{countText(row.systems, 'system')}</td>
            <td className="num text-ink2 max-md:hidden">{countText(row.offers, 'offer')}</td>
            <td className="num text-ink2 max-sm:hidden">{momentText(new Date(row.updatedAt), now)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
