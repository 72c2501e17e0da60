'use client';

import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { errorText } from '../api/api-error';
import { api, type Inputs } from '../api/client';
import { useInquiry } from '../api/use-inquiry';
import { useMe } from '../api/use-me';
import { isoDayText } from '../figures/moment';
import { Fault } from '../look/notice';
import { Working } from '../look/working';
import { Loading } from '../shell/loading';
import { Page } from '../shell/page';
import { Documents } from './documents';
import { OfferState } from './offer-state';
import { OfferTermsForm } from './offer-terms-form';
import { Positions } from './positions';
import { Releases } from './releases';
import { Revisions } from './revisions';
import { StandingAgainst } from './standing-against';
import { termsOf } from './terms-of';
import { Totals } from './totals';
import { isUnsent, maySend, whoActs } from './who-acts';

/** An offer as the client reads it: positions, sums, delivery, terms, documents, and what stands against sending it. */
export function OfferPage({ id }: { readonly id: string }) {
  const me = useMe();
  const client = useQueryClient();
  const [isRevising, setRevising] = useState(false);
  const query = useQuery({ queryKey: ['offer', id], queryFn: () => api.offers.get.query({ id }) });
  const inquiry = useInquiry(query.data?.inquiryId, query.data?.systemId);
  const refresh = (): void => {
    void client.invalidateQueries({ queryKey: ['offer', id] });
    void client.invalidateQueries({ queryKey: ['inquiry'] });
  };
  const send = useMutation({ mutationFn: () => api.offers.send.mutate({ id }), onSuccess: refresh });
  const revise = useMutation({
    mutationFn: (input: Inputs['offers']['revise']) => api.offers.revise.mutate(input),
    onSuccess: () => {
      setRevising(false);
      refresh();
    },
  });
  if (query.data === undefined || me === undefined)
    return <Loading sheet="Offer" what="the offer" query={query} />;
  const record = query.data;
  const { offer } = record;
  const unsent = isUnsent(record);
  const next = whoActs(me, record);
  const isBlocked = record.blocking.length > 0;
  const actions =
    maySend(me) && unsent ? (
      <>
        {isBlocked && (
          <a id="why-not-sent" href="#before-sending" className="text-[12px]">
            Not ready to be sent
          </a>
        )}
        <button
          type="button"
          className="btn btn-ink"
          disabled={send.isPending || isBlocked}
          aria-describedby={isBlocked ? 'why-not-sent' : undefined}
          onClick={() => send.mutate()}
        >
          Send the offer
        </button>
      </>
    ) : undefined;
  return (
    <Page
      title={`Offer ${record.number}`}
      sheet="Offer"
      job={inquiry.job}
      links={inquiry.links}
      actions={actions}
    >
      <main
        id="main"
        className="mx-auto grid max-w-[1440px] gap-6 px-4 py-6 lg:grid-cols-[minmax(0,2fr)_minmax(0,1fr)] lg:px-6"
      >
        <div className="min-w-0">
          <div className="sec flex flex-wrap items-baseline justify-between gap-3">
            <h1>
              Offer {record.number}
              <span className="ml-3 align-middle">
                <OfferState revision={record.revision} state={record.state} />
              </span>
            </h1>
            <p className="text-ink2">
              {offer.date === undefined ? 'No date yet' : isoDayText(offer.date)}
              {offer.validUntil === undefined ? '' : `, valid until ${isoDayText(offer.validUntil)}`}
            </p>
          </div>
          {/* On wide screens the head of the page says it. */}
          <p className="say mb-3 max-w-[70ch] xl:hidden print:block">
            {offer.title}
            {offer.client === undefined ? '' : `, for ${offer.client}`}.
          </p>
          <Positions offer={offer} />
          <Totals offer={offer} />
          <section className="sec mt-6">
            <h2>Delivery in {offer.deliveryWeeks} weeks</h2>
            <ol>
              {offer.deliveryChain.map(({ step, days }) => (
                <li key={step} className="row flex justify-between gap-4 py-1.5">
                  <span>{step}</span>
                  <span className="num">{days} working days</span>
                </li>
              ))}
            </ol>
          </section>
          <section className="sec mt-6">
            <h2>Terms</h2>
            <ul>
              {offer.terms.map((term) => (
                <li key={term} className="row py-1.5">
                  {term}
                </li>
              ))}
            </ul>
          </section>
        </div>
        <aside className="grid min-w-0 content-start gap-6">
          {unsent && me.role !== 'customer' && (
            <StandingAgainst record={record} me={me} next={next} onChange={refresh} />
          )}
          {send.isError && <Fault text={errorText(send.error)} />}
          <section className="sec">
            <h2>Documents</h2>
            <Documents offerId={id} documents={record.documents} />
          </section>
          <section className="sec">
            <div className="sec-head">
              <h2>Revisions</h2>
              {maySend(me) && (
                <button
                  type="button"
                  className="btn btn-sm"
                  onClick={() => setRevising(!isRevising)}
                  aria-expanded={isRevising}
                >
                  {isRevising ? 'Leave it' : 'Revise'}
                </button>
              )}
            </div>
            {isRevising && (
              <OfferTermsForm
                initial={offer}
                action="Make the next revision"
                isBusy={revise.isPending}
                onTerms={(terms) => revise.mutate({ id, ...termsOf(terms, offer) })}
              />
            )}
            {revise.isPending && (
              <Working text="Pricing the system as it is now and writing its documents." />
            )}
            {revise.isError && <Fault text={errorText(revise.error)} />}
            {!unsent && next !== undefined && <p className="say-sm mt-1">{next}</p>}
            <Revisions revisions={record.revisions} />
            {!unsent && <Releases releases={record.releases} />}
          </section>
          {offer.openPoints.length > 0 && (
            <section className="sec">
              <h2>Open points</h2>
              <ul>
                {offer.openPoints.map(({ question, why }) => (
                  <li key={question} className="row py-1.5">
                    {question} <span className="say-sm block text-ink2 first-letter:uppercase">{why}</span>
                  </li>
                ))}
              </ul>
            </section>
          )}
          <section className="sec">
            <h2>Cautions</h2>
            <ul>
              {offer.cautions.map((text) => (
                <li key={text} className="row say-sm py-1.5 first-letter:uppercase">
                  {text}
                </li>
              ))}
            </ul>
          </section>
        </aside>
      </main>
    </Page>
  );
}
