'use client';

import { useQuery } from '@tanstack/react-query';
import Link from 'next/link';
import { useMemo } from 'react';
import { api, type Outputs } from '../api/client';
import { useMe } from '../api/use-me';
import { Working } from '../look/working';
import { Page } from '../shell/page';
import { DraftButton } from './draft-button';
import type { ListPrices } from './list-prices';
import { RangeBrowser } from './range-browser';
import { mayKeep, mayRead, useRevisions } from './use-revision';
import { QueryFault } from '../shell/query-fault';

type Range = Outputs['catalogue']['get'];

const listsOf = ({ prices, priceList }: Range): readonly ListPrices[] =>
  prices === null || priceList === null
    ? []
    : [
        {
          id: priceList.id,
          currency: priceList.currency as ListPrices['currency'],
          of: Object.fromEntries(Object.entries(prices).map(([id, price]) => [id, String(price)])),
        },
      ];

/** Every part that the maker has, to be looked up. */
export function RangePage() {
  const me = useMe();
  const query = useQuery({
    queryKey: ['range'],
    queryFn: () => api.catalogue.get.query(),
    staleTime: 60_000,
    structuralSharing: false,
  });
  const keeps = mayKeep(me);
  const revisions = useRevisions(keeps);
  const { data, isError } = query;
  const lists = useMemo(() => (data === undefined ? [] : listsOf(data)), [data]);
  return (
    <Page title="Range" actions={keeps && <DraftButton revisions={revisions.data} />}>
      <main id="main" className="mx-auto max-w-[1440px] px-4 py-6 lg:px-6">
        <div className="sec-head mb-4 flex-wrap">
          <h1>Range</h1>
          {data !== undefined && (
            <p className="text-ink2">
              {data.revision}
              {data.priceList === null ? '' : `, price list ${data.priceList.id}`}
              {mayRead(me) && !keeps && (
                <>
                  {' '}
                  <Link href="/range/revisions" className="ml-2 underline">
                    Revisions
                  </Link>
                </>
              )}
            </p>
          )}
        </div>
        {isError && <QueryFault query={query} />}
        {query.isPending && <Working text="Loading the range." />}
        {data !== undefined && <RangeBrowser items={data.items} lists={lists} />}
      </main>
    </Page>
  );
}
