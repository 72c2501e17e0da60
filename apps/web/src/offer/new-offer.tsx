'use client';

import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useRouter } from 'next/navigation';
import { useMemo } from 'react';
import { errorText } from '../api/api-error';
import { api, type Inputs } from '../api/client';
import { useInquiry } from '../api/use-inquiry';
import { useMe } from '../api/use-me';
import { useCandidateView } from '../candidates/use-candidate-view';
import { useEngine } from '../engine/use-engine';
import { Empty, Fault } from '../look/notice';
import { Working } from '../look/working';
import { Loading } from '../shell/loading';
import { Page } from '../shell/page';
import { SystemTitle } from '../system/system-title';
import { BlockingList } from './blocking-list';
import { OfferTermsForm } from './offer-terms-form';
import { termsOf } from './terms-of';

/** Makes the first offer of a system: its terms, and what will still stand against sending it. */
export function NewOffer({ systemId }: { readonly systemId: string }) {
  const me = useMe();
  const router = useRouter();
  const client = useQueryClient();
  const system = useQuery({
    queryKey: ['system-state', systemId],
    queryFn: () => api.systems.get.query({ id: systemId }),
  });
  const inquiry = useInquiry(system.data?.inquiryId, systemId);
  const create = useMutation({
    mutationFn: (input: Inputs['offers']['create']) => api.offers.create.mutate(input),
    onSuccess: async ({ id }) => {
      await client.invalidateQueries({ queryKey: ['inquiry'] });
      router.push(`/offers/${id}`);
    },
  });
  const engine = useEngine(system.data?.document);
  const view = useCandidateView(engine.data, system.data?.document);
  const names = useMemo(() => new Map(engine.data?.items.map((item) => [item.id, item.name])), [engine.data]);
  const nameOf = (item: string | null | undefined): string =>
    item == null ? 'none' : (names.get(item) ?? view?.specials[item] ?? item);
  if (system.data === undefined || me === undefined)
    return <Loading sheet="Offer" what="the system" query={system} />;
  const { assessment, document, name } = system.data;
  const initial = document.offer ?? {};
  return (
    <Page title="Offer" sheet="Offer" job={inquiry.job} links={inquiry.links}>
      <main
        id="main"
        className="mx-auto grid max-w-[1440px] gap-6 px-4 py-6 lg:grid-cols-[minmax(0,2fr)_minmax(0,1fr)] lg:px-6"
      >
        {engine.data !== undefined && (
          <div className="border-[1.4px] border-t-0 border-ink lg:col-span-2">
            <SystemTitle
              bench={{
                document,
                nameOf,
                assessment,
                commercial: view?.commercial,
                currency: engine.data.currency,
              }}
              system={system.data}
              priceListId={engine.data.priceListId}
              mayFreeze={false}
              saved
            />
          </div>
        )}
        <section className="sec">
          <h1>Offer for system {name}</h1>
          {me.role === 'applications_engineer' ? (
            <>
              <p className="say mt-1 mb-4 max-w-[70ch]">
                Freezes the system as it is now, prices it by the list in force and writes the documents.
              </p>
              <OfferTermsForm
                initial={initial}
                action="Make the offer"
                isBusy={create.isPending}
                onTerms={(terms) => create.mutate({ systemId, ...termsOf(terms, initial) })}
              />
              {create.isPending && <Working text="Pricing the system and writing its documents." />}
              {create.isError && <Fault text={errorText(create.error)} />}
            </>
          ) : (
            <Empty
              text={`No offer has been made of this system yet.${me.role === 'customer' ? '' : ' Applications engineers make it.'}`}
            />
          )}
        </section>
        {me.role !== 'customer' && (
          <aside className="sec">
            <h2>Before it can be sent</h2>
            <BlockingList sentences={assessment.blocking} />
          </aside>
        )}
      </main>
    </Page>
  );
}
