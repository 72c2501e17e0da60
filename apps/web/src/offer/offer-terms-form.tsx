'use client';

import { type ReactNode, useId } from 'react';
import { useForm } from 'react-hook-form';
import { freeDiscountPercent } from '@flangewise/quotation';
import { isoDay } from '../figures/moment';
import { Refused } from '../look/notice';

/** What is typed; a field may be left empty. */
export interface OfferTerms {
  readonly date: string;
  readonly discountPercent: string;
  readonly taxPercent: string;
}

/** Those of an offer, or those that a system names for its offer. */
export type Percentages = { readonly [Field in 'discountPercent' | 'taxPercent']?: string | undefined };

const percentRule = {
  pattern: {
    value: /^\s*(\d{1,2}([.,]\d{1,2})?)?\s*$/,
    message: 'A percentage from 0 to 99.99 is allowed, with up to two decimals',
  },
};

const dateRule = {
  pattern: { value: /^\d{4}-\d{2}-\d{2}$/, message: 'A calendar date is allowed, for instance 2026-11-24' },
  required: 'A calendar date is allowed, for instance 2026-11-24',
};

export interface OfferTermsFormProps {
  /** Percentages that hold unless others are typed. */
  readonly initial: Percentages;
  readonly action: string;
  readonly isBusy: boolean;
  readonly onTerms: (terms: OfferTerms) => void;
}

interface FieldProps {
  readonly label: string;
  readonly hint: string;
  readonly trouble: string | undefined;
  readonly input: (attributes: {
    id: string;
    'aria-invalid'?: true;
    'aria-describedby'?: string;
  }) => ReactNode;
}

function Field({ label, hint, trouble, input }: FieldProps) {
  const id = useId();
  return (
    <div className="min-w-0">
      <label htmlFor={id} className="lab mb-1 block">
        {label}
      </label>
      {input(
        trouble === undefined ? { id } : { id, 'aria-invalid': true, 'aria-describedby': `${id}-trouble` },
      )}
      <span className="lab mt-0.5 block">{hint}</span>
      {trouble !== undefined && <Refused id={`${id}-trouble`} text={trouble} />}
    </div>
  );
}

/** Date, discount and tax of an offer. */
export function OfferTermsForm({ initial, action, isBusy, onTerms }: OfferTermsFormProps) {
  const { register, handleSubmit, formState } = useForm<OfferTerms>({
    defaultValues: {
      date: isoDay(new Date()),
      discountPercent: initial.discountPercent ?? '',
      taxPercent: initial.taxPercent ?? '',
    },
  });
  const { errors } = formState;
  return (
    <form noValidate className="grid gap-3" onSubmit={(event) => void handleSubmit(onTerms)(event)}>
      <div className="grid gap-3 sm:grid-cols-3">
        <Field
          label="Date of the offer"
          hint="Validity counts from it"
          trouble={errors.date?.message}
          input={(attributes) => (
            <input type="date" className="field" {...attributes} {...register('date', dateRule)} />
          )}
        />
        <Field
          label="Discount, %"
          hint={`Above ${freeDiscountPercent} % an approver releases it`}
          trouble={errors.discountPercent?.message}
          input={(attributes) => (
            <input
              inputMode="decimal"
              className="field"
              {...attributes}
              {...register('discountPercent', percentRule)}
            />
          )}
        />
        <Field
          label="Tax, %"
          hint="0 where the client pays it himself"
          trouble={errors.taxPercent?.message}
          input={(attributes) => (
            <input
              inputMode="decimal"
              className="field"
              {...attributes}
              {...register('taxPercent', percentRule)}
            />
          )}
        />
      </div>
      <div>
        <button type="submit" className="btn btn-ink" disabled={isBusy}>
          {action}
        </button>
      </div>
    </form>
  );
}
