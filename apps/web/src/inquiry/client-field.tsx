'use client';

import { useQuery } from '@tanstack/react-query';
import { useId } from 'react';
import { useWatch } from 'react-hook-form';
import { api } from '../api/client';
import { TextField } from './fields';
import type { FormValues } from './form-values';
import { whoSees } from './who-sees';

/** For whom an inquiry is: known clients are proposed, and who will see it is said, for the name alone decides. */
export function ClientField() {
  const list = useId();
  const typed = useWatch<FormValues, 'client'>({ name: 'client' });
  const { data: clients } = useQuery({ queryKey: ['clients'], queryFn: () => api.clients.list.query() });
  return (
    <div className="min-w-0">
      <TextField
        name="client"
        label="Client"
        placeholder="company"
        list={list}
        hint={clients === undefined ? undefined : whoSees(typed ?? '', clients)}
      />
      <datalist id={list}>
        {clients?.map(({ name }) => (
          <option key={name} value={name} />
        ))}
      </datalist>
    </div>
  );
}
