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
const rules: Area = { title: 'Rules', href: '/rules' };
const revisions: Area = { title: 'Revisions', href: '/range/revisions' };

/** What a person has to do with, the first where they start. */
export const areasOf = ({ role }: Me): readonly [Area, ...Area[]] =>
  role === 'catalogue_keeper'
    ? [range, revisions, rules]
    : role === 'customer'
      ? [inquiries]
      : [inquiries, range, rules];

/** The area that an address belongs to: the one whose own address is the longest that it begins with. */
const currentOf = (areas: readonly Area[], path: string): Area | undefined =>
  areas
    .filter(({ href }) => path === href || (href !== '/' && path.startsWith(`${href}/`)))
    .toSorted((a, b) => b.href.length - a.href.length)[0];

/** The way between them, where there is more than one. */
export function Areas({ me }: { readonly me: Me }) {
  const path = usePathname();
  const areas = areasOf(me);
  if (areas.length < 2) return null;
  const current = currentOf(areas, path);
  return (
    <nav aria-label="Areas" className="flex min-h-12 items-stretch self-stretch">
      {areas.map((area) => (
        <Link
          key={area.href}
          href={area.href}
          aria-current={area === current ? (path === area.href ? 'page' : 'true') : undefined}
          className={area === current ? sheetShapeCurrent : sheetShape}
        >
          {area.title}
        </Link>
      ))}
    </nav>
  );
}
