import { type FieldPath, useFormContext, type UseFormRegisterReturn } from 'react-hook-form';
import { afterPress } from './after-press';
import type { FormValues } from './form-values';

export type Name = FieldPath<FormValues>;

/** Ties an input to its field. What is wrong with it is said once it is left, and never while a button is being pressed. */
export function useField(name: Name): UseFormRegisterReturn<Name> {
  const { register } = useFormContext<FormValues>();
  const registered = register(name);
  return {
    ...registered,
    onBlur: async (event) => afterPress(() => void registered.onBlur(event)),
  };
}
