'use client';

import type { Kind } from '@flangewise/quantities';
import type { ReactNode } from 'react';
import { get, useFormContext, useWatch } from 'react-hook-form';
import { Refused } from '../look/notice';
import type { FormValues } from './form-values';
import { readingOf } from './reading-of';
import { type Name, useField } from './use-field';

export const fieldId = (name: string): string => `f-${name.replaceAll('.', '-')}`;

/** What is wrong with a field; undefined when nothing is. */
export function useTrouble(name: string): string | undefined {
  const { formState } = useFormContext<FormValues>();
  const error = get(formState.errors, name) as { message?: unknown } | undefined;
  return typeof error?.message === 'string' ? error.message : undefined;
}

/** How a quantity was understood, where that is another text. */
function Understood({ name, kind }: { readonly name: Name; readonly kind: Kind }) {
  const typed = useWatch<FormValues>({ name });
  if (typeof typed !== 'string' || typed.trim() === '') return null;
  const shown = readingOf(typed, kind);
  if (shown === undefined) return null;
  return <span className="lab mt-0.5 block">read as {shown}</span>;
}

interface FrameProps {
  readonly name: string;
  readonly label: string;
  readonly hint?: string | undefined;
  readonly children: ReactNode;
}

function Frame({ name, label, hint, children }: FrameProps) {
  const trouble = useTrouble(name);
  return (
    <div className="min-w-0">
      <label htmlFor={fieldId(name)} className="lab mb-1 block">
        {label}
      </label>
      {children}
      {hint !== undefined && <span className="lab mt-0.5 block">{hint}</span>}
      {trouble !== undefined && <Refused id={`${fieldId(name)}-trouble`} text={trouble} />}
    </div>
  );
}

function useAttributes(name: string) {
  const trouble = useTrouble(name);
  return trouble === undefined
    ? { id: fieldId(name) }
    : {
        id: fieldId(name),
        'aria-invalid': true,
        'aria-describedby': `${fieldId(name)}-trouble`,
      };
}

export interface TextFieldProps {
  readonly name: Name;
  readonly label: string;
  readonly placeholder?: string;
  readonly hint?: string | undefined;
  /** Id of a list of proposals. */
  readonly list?: string;
  /** For quantities: how it was understood is shown. */
  readonly kind?: Kind;
  readonly type?: 'text' | 'date';
}

/** One line of text: a name, a number, a quantity with its unit. */
export function TextField({ name, label, placeholder, hint, list, kind, type = 'text' }: TextFieldProps) {
  const field = useField(name);
  const attributes = useAttributes(name);
  return (
    <Frame name={name} label={label} hint={hint}>
      <input
        className="field"
        type={type}
        autoComplete="off"
        placeholder={placeholder}
        list={list}
        {...attributes}
        {...field}
      />
      {kind !== undefined && <Understood name={name} kind={kind} />}
    </Frame>
  );
}

export interface ChoiceFieldProps {
  readonly name: Name;
  readonly label: string;
  /** Value and how it is read; an empty value says that nobody said. */
  readonly options: readonly (readonly [value: string, title: string])[];
  readonly hint?: string;
}

export function ChoiceField({ name, label, options, hint }: ChoiceFieldProps) {
  const field = useField(name);
  const attributes = useAttributes(name);
  return (
    <Frame name={name} label={label} hint={hint}>
      <select className="field" {...attributes} {...field}>
        {options.map(([value, title]) => (
          <option key={value} value={value}>
            {title}
          </option>
        ))}
      </select>
    </Frame>
  );
}

const said = [
  ['', 'not said'],
  ['yes', 'yes'],
  ['no', 'no'],
] as const;

/** Yes, no, or nobody said. */
export function SaidField({ name, label }: { readonly name: Name; readonly label: string }) {
  return <ChoiceField name={name} label={label} options={said} />;
}

/** A wish: there or not. */
export function WishField({ name, label }: { readonly name: Name; readonly label: string }) {
  const field = useField(name);
  return (
    <label className="flex min-h-8 cursor-pointer items-center gap-2.5">
      <input type="checkbox" className="tick" id={fieldId(name)} {...field} />
      {label}
    </label>
  );
}

const spanEnds = ['lowest', 'usual', 'highest'] as const;

export interface SpanFieldProps {
  readonly name:
    | 'process.pressure'
    | 'process.temperature'
    | 'process.stirringSpeed'
    | `sets.${number}.pressure`
    | `sets.${number}.temperature`;
  readonly label: string;
  readonly kind: Kind;
  /** Examples for lowest, usual, highest. */
  readonly examples: readonly [string, string, string];
}

/** Lowest, usual and highest of one condition. */
export function SpanField({ name, label, kind, examples }: SpanFieldProps) {
  return (
    <fieldset className="min-w-0">
      <legend className="mb-1 font-medium">{label}</legend>
      <div className="grid grid-cols-3 gap-3">
        {spanEnds.map((end, i) => (
          <TextField
            key={end}
            name={`${name}.${end}`}
            label={end}
            kind={kind}
            placeholder={examples[i] ?? ''}
          />
        ))}
      </div>
    </fieldset>
  );
}
