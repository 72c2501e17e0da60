import type { InquiryInput } from '@flangewise/model';
import { useCallback, useEffect, useState } from 'react';
import { type Resolver, useForm, type UseFormReturn, useWatch } from 'react-hook-form';
import { dropDraft, keepDraft, readDraft } from './draft-store';
import { documentOf, formOf, type FormValues } from './form-values';
import { errorsOf, readForm, type ReadForm } from './read-form';
import { takeTrial } from './trial';

const resolver: Resolver<FormValues> = (values) => {
  const read = readForm(values);
  return read.ok ? { values, errors: {} } : { values: {}, errors: errorsOf(read.troubles) };
};

/** The document of the fields as text, to see whether two are the same. */
const textOf = (values: FormValues): string => JSON.stringify(documentOf(values));

export interface InquiryForm {
  readonly form: UseFormReturn<FormValues>;
  /** Key of the fields: another one when they show another document, since a field keeps what stands in it otherwise. */
  readonly fieldsKey: number;
  /** What stands in the fields now. */
  readonly read: ReadForm;
  /** Whether that differs from what is saved. */
  readonly isChanged: boolean;
  /** When the draft was kept that now stands in the fields; undefined when they show what is saved. */
  readonly restoredFrom: string | undefined;
  /** The change that the fields show and that nobody has kept yet, in words. */
  readonly tried: string | undefined;
  /** Makes the tried change one to be saved. */
  readonly keepTried: () => void;
  /** Shows what stood in the fields before the change was tried. */
  readonly takeBack: () => void;
  /** Puts values into the fields, as something to be saved. */
  readonly take: (values: FormValues) => void;
  /** Forgets what was typed. */
  readonly discard: () => void;
  /** What is in the fields has been saved. */
  readonly saved: () => void;
}

/** Fields of one inquiry, with what was typed kept on this computer until it is saved. */
export function useInquiryForm(id: string, document: Partial<InquiryInput>): InquiryForm {
  const [restoredFrom, setRestoredFrom] = useState<string>();
  const [tried, setTried] = useState<string>();
  const form = useForm<FormValues>({
    defaultValues: formOf(document),
    resolver,
    mode: 'onTouched',
    shouldFocusError: true,
  });
  const values = useWatch({ control: form.control }) as FormValues;
  const [savedText, setSavedText] = useState(() => textOf(formOf(document)));
  const isChanged = textOf(values) !== savedText;
  const [fieldsKey, setFieldsKey] = useState(0);
  const { reset, trigger } = form;
  const show = useCallback(
    (shown: FormValues): void => {
      reset(shown);
      setFieldsKey((key) => key + 1);
    },
    [reset],
  );
  const take = useCallback(
    (taken: FormValues): void => {
      show(taken);
      void trigger();
    },
    [show, trigger],
  );

  const restore = useCallback((): boolean => {
    const restored = readDraft(id);
    if (restored === undefined) return false;
    setRestoredFrom(restored.at);
    take(restored.values);
    return true;
  }, [take, id]);

  // The page comes from the server without the draft, which only this computer has.
  useEffect(() => {
    const trial = takeTrial(id);
    if (trial === undefined) {
      restore();
      return;
    }
    setTried(trial.text);
    take(trial.values);
  }, [take, restore, id]);

  useEffect(() => {
    if (isChanged && tried === undefined) keepDraft(id, values);
  }, [id, isChanged, tried, values]);

  return {
    form,
    fieldsKey,
    read: readForm(values),
    isChanged,
    restoredFrom,
    tried,
    keepTried: () => setTried(undefined),
    takeBack: () => {
      setTried(undefined);
      if (!restore()) show(formOf(document));
    },
    take,
    discard: () => {
      dropDraft(id);
      setRestoredFrom(undefined);
      show(formOf(document));
    },
    saved: () => {
      dropDraft(id);
      setRestoredFrom(undefined);
      setSavedText(textOf(form.getValues()));
    },
  };
}
