'use client';

import Link from 'next/link';
import { Page } from './page';

/** Nothing stands at this address: the ways on. */
export function NotFound() {
  return (
    <Page title="No such page">
      <main id="main" className="mx-auto max-w-[1440px] px-4 py-6 lg:px-6">
        <div className="sec-head mb-4">
          <h1>No such page</h1>
        </div>
        <p className="say mb-4 max-w-[60ch]">
          Nothing stands at this address. It may be mistyped, or the link that led here is old.
        </p>
        <Link href="/" className="btn btn-ink">
          To the start
        </Link>
      </main>
    </Page>
  );
}
