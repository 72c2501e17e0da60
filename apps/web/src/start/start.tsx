'use client';

import { useQuery } from '@tanstack/react-query';
import Link from 'next/link';
import { useRouter } from 'next/navigation';
import { useEffect } from 'react';
import { api } from '../api/client';
import { useMe } from '../api/use-me';
import { Empty } from '../look/notice';
import { Working } from '../look/working';
import { areasOf } from '../shell/areas';
import { Page } from '../shell/page';
import { InquiryTable } from './inquiry-table';
import { QueryFault } from '../shell/query-fault';

const mayCreate = (role: string): boolean => role === 'applications_engineer' || role === 'customer';

/** All inquiries that this person may see, and the way to a new one. */
export function Start() {
  const me = useMe();
  const router = useRouter();
  const start = me === undefined ? undefined : areasOf(me)[0].href;
  const startsHere = start === '/';
  useEffect(() => {
    if (start !== undefined && start !== '/') router.replace(start);
  }, [router, start]);
  const list = useQuery({
    queryKey: ['inquiries'],
    queryFn: () => api.inquiries.list.query(),
    enabled: startsHere,
  });
  const creates = me !== undefined && mayCreate(me.role);
  const newInquiry = creates && (
    <Link href="/inquiries/new" className="btn btn-ink">
      New inquiry
    </Link>
  );
  return (
    <Page title="Inquiries" actions={list.data !== undefined && list.data.length > 0 && newInquiry}>
      <main id="main" className="mx-auto max-w-[1120px] px-4 py-6 lg:px-6">
        <div className="sec-head mb-4">
          <h1>Inquiries</h1>
          {me !== undefined && (
            <p className="text-ink2">
              {me.name}, {me.client?.name ?? me.roleTitle}
            </p>
          )}
        </div>
        {list.isPending && <Working text="Loading the inquiries." />}
        {list.isError && <QueryFault query={list} />}
        {list.data?.length === 0 && (
          <Empty
            text={
              creates
                ? 'There are no inquiries yet. Start one from a file, or type in what the process needs.'
                : 'There are no inquiries yet. Applications engineers and customers enter them.'
            }
          >
            {newInquiry}
          </Empty>
        )}
        {list.data !== undefined && list.data.length > 0 && <InquiryTable rows={list.data} />}
      </main>
    </Page>
  );
}
