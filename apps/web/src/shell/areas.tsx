'use client';

import Link from 'next/link';
import { usePathname } from 'next/navigation';
import type { Me } from '../api/use-me';
import { sheetShape, sheetShapeCurrent } from './sheets';

interface Area {
  readonly title: string;
  readonly href: string;
}

const inquiries: Area = { title: 'Inquiries', href: '/' };
const range: Area = { title: 'Range', href: '/range' };

/** What a person has to do with, the first where they start. */
export const areasOf = ({ role }: Me): readonly [Area, ...Area[]] =>
  role === 'catalogue_keeper' ? [range] : role === 'customer' ? [inquiries] : [inquiries, range];

/** The way between them, where there is more than one. */
export function Areas({ me }: { readonly me: Me }) {
  const path = usePathname();
  const areas = areasOf(me);
  if (areas.length < 2) return null;
  return (
    <nav aria-label="Areas" className="flex min-h-12 items-stretch self-stretch">
      {areas.map(({ title, href }) => (
        <Link
          key={href}
          href={href}
          aria-current={path === href ? 'page' : undefined}
          className={path === href ? sheetShapeCurrent : sheetShape}
        >
          {title}
        </Link>
      ))}
    </nav>
  );
}
