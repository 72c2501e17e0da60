'use client';

import type { InquiryInput } from '@flangewise/model';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { Fragment, useState } from 'react';
import { FormProvider } from 'react-hook-form';
import { errorText } from '../api/api-error';
import { useMe } from '../api/use-me';
import { momentText } from '../figures/moment';
import { Fault, Note } from '../look/notice';
import { type Job, Page } from '../shell/page';
import type { SheetLinks } from '../shell/sheets';
import { ClientField } from './client-field';
import { TextField } from './fields';
import { formOf, type FormValues } from './form-values';
import { ImportButton } from './import-button';
import { MediaSection } from './media-section';
import { OpenPoints } from './open-points';
import { ProcessSection } from './process-section';
import { whyNotAsked } from './read-form';
import { Row, Section } from './section';
import { SetsSection } from './sets-section';
import { SiteSection, WishesSection } from './site-section';
import { Statement } from './statement';
import { TriedChange } from './tried-change';
import { TroubleList } from './trouble-list';
import { useInquiryForm } from './use-inquiry-form';
import { useOpenPoints } from './use-open-points';

export interface InquiryFormProps {
  /** Of the inquiry; `new` for one that is not saved yet. */
  readonly id: string;
  readonly document: Partial<InquiryInput>;
  readonly job?: Job | undefined;
  readonly links?: SheetLinks | undefined;
  /** Why this person does not save it; undefined for those who do. */
  readonly whyNot?: string | undefined;
  /** Saves the inquiry and returns its id. */
  readonly save: (document: InquiryInput) => Promise<string>;
  readonly onSaved: (id: string, goOn: boolean) => void;
}

/** The inquiry as a form that asks what matters; unknowns stay open and are listed. */
export function InquiryForm({ id, document, job, links, whyNot, save, onSaved }: InquiryFormProps) {
  const me = useMe();
  const queries = useQueryClient();
  const typing = useInquiryForm(id, document);
  const { form, fieldsKey, read, isChanged, restoredFrom, tried, take, discard, saved } = typing;
  const [before, setBefore] = useState<FormValues>();
  const points = useOpenPoints(read.ok ? read.document : undefined);
  const saving = useMutation({
    mutationFn: async ({ goOn }: { readonly goOn: boolean }) => {
      if (!read.ok) throw new Error('The fields marked in red cannot be used yet.');
      const savedId = await save(read.document);
      saved();
      await queries.invalidateQueries({ queryKey: ['inquiries'] });
      await queries.invalidateQueries({ queryKey: ['inquiry', savedId] });
      onSaved(savedId, goOn);
    },
  });
  const submit = (goOn: boolean) =>
    form.handleSubmit(() => {
      if (tried === undefined) saving.mutate({ goOn });
    });
  const whyNotSaved = tried === undefined ? {} : { disabled: true, 'aria-describedby': 'tried' };
  const { isSubmitted } = form.formState;
  const shownTroubles = !read.ok && (isSubmitted || before !== undefined || restoredFrom !== undefined);

  const buttons = (
    <>
      <button
        type="button"
        className="btn"
        disabled={saving.isPending || !isChanged}
        onClick={(event) => void submit(false)(event)}
        {...whyNotSaved}
      >
        Save
      </button>
      <button
        type="button"
        className="btn btn-ink"
        disabled={saving.isPending}
        onClick={(event) => void submit(true)(event)}
        {...whyNotSaved}
      >
        Find systems
      </button>
    </>
  );

  return (
    <Page
      title={job?.title ?? 'New inquiry'}
      sheet="Inquiry"
      links={links}
      job={job}
      actions={
        whyNot === undefined && (
          <>
            <span className="lab max-sm:hidden">
              {isChanged ? 'not saved' : job === undefined ? '' : 'saved'}
            </span>
            {buttons}
          </>
        )
      }
    >
      {whyNot !== undefined && <Note>{whyNot}</Note>}
      <FormProvider {...form}>
        <main
          id="main"
          className="mx-auto grid max-w-[1440px] gap-x-8 gap-y-6 px-4 py-5 lg:px-6 xl:grid-cols-[minmax(0,1fr)_400px]"
        >
          <form className="min-w-0" noValidate onSubmit={(event) => void submit(true)(event)}>
            <div className="sec-head mb-3">
              <h1>{job === undefined ? 'New inquiry' : 'Inquiry'}</h1>
            </div>
            {tried !== undefined && (
              <TriedChange
                text={tried}
                own={me?.role === 'customer'}
                onKeep={typing.keepTried}
                onTakeBack={typing.takeBack}
              />
            )}
            {tried === undefined && restoredFrom !== undefined && (
              <p className="mb-3 flex flex-wrap items-center gap-3 bg-given-t px-3 py-2">
                Typed and kept on this computer, {momentText(new Date(restoredFrom), new Date())}, not saved
                yet.
                <button type="button" className="btn btn-sm" onClick={discard}>
                  Forget it
                </button>
              </p>
            )}
            <fieldset disabled={whyNot !== undefined} className="min-w-0">
              {whyNot === undefined && (
                <div className="mb-5">
                  <ImportButton
                    onRead={(taken) => {
                      setBefore(form.getValues());
                      take(formOf(taken));
                    }}
                  />
                  {before !== undefined && (
                    <p className="mt-2 flex items-center gap-3">
                      The fields below show the file.
                      <button
                        type="button"
                        className="btn btn-sm"
                        onClick={() => {
                          take(before);
                          setBefore(undefined);
                        }}
                      >
                        Undo
                      </button>
                    </p>
                  )}
                </div>
              )}
              <Fragment key={fieldsKey}>
                <Section title="Job">
                  <TextField name="title" label="Title" placeholder="Hydrogenation in methanol" />
                  {me !== undefined && me.client === null && (
                    <Row>
                      <ClientField />
                      <TextField name="contact" label="Contact" placeholder="who asks" />
                      <TextField name="received" label="Received" type="date" />
                    </Row>
                  )}
                  <Statement />
                </Section>
                <MediaSection />
                <SetsSection />
                <ProcessSection />
                <SiteSection />
                <WishesSection />
              </Fragment>
              {/* Where the head of the page is far away. */}
              {whyNot === undefined && <div className="mb-6 flex gap-2 sm:hidden">{buttons}</div>}
              <button type="submit" className="sr-only" tabIndex={-1} aria-hidden="true">
                Find systems
              </button>
            </fieldset>
          </form>
          <div className="grid content-start gap-6 xl:sticky xl:top-4 xl:max-h-[calc(100dvh-32px)] xl:overflow-y-auto xl:pr-1">
            {saving.isError && (
              <Fault
                text={errorText(saving.error)}
                action={{ title: 'Save again', run: () => void submit(false)() }}
              />
            )}
            {shownTroubles && <TroubleList troubles={read.troubles} />}
            <OpenPoints points={read.ok ? points.data?.openPoints : undefined} lacking={whyNotAsked(read)} />
            {points.isError && <p className="lab">Open points: {errorText(points.error)}</p>}
          </div>
        </main>
      </FormProvider>
    </Page>
  );
}
