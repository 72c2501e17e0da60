'use client';

import { useQueryClient } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { useRouter } from 'next/navigation';
import { signIn } from '../api/sign-in';
import { StatusMark } from '../look/status-mark';

/** A page of this product; anything else leads to the start. */
const wanted = (): string => {
  const to = new URLSearchParams(location.search).get('to') ?? '/';
  return to.startsWith('/') && !to.startsWith('//') ? to : '/';
};

export function SignInForm() {
  const router = useRouter();
  const queries = useQueryClient();
  const [trouble, setTrouble] = useState<string>();
  const [busy, setBusy] = useState(false);

  const submit = async (event: FormEvent<HTMLFormElement>): Promise<void> => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    setBusy(true);
    const answer = await signIn(String(form.get('email')), String(form.get('password')));
    if (answer.ok) {
      queries.clear();
      router.replace(wanted());
      return;
    }
    setBusy(false);
    setTrouble(answer.message);
  };

  return (
    <form className="mt-4 grid gap-4" onSubmit={(event) => void submit(event)}>
      <label className="lab">
        E-mail address
        <input className="field mt-1" name="email" type="email" autoComplete="username" required />
      </label>
      <label className="lab">
        Password
        <input
          className="field mt-1"
          name="password"
          type="password"
          autoComplete="current-password"
          required
        />
      </label>
      <p role="alert" className="empty:hidden">
        {trouble !== undefined && (
          <>
            <StatusMark status="not met" label="refused" /> {trouble}
          </>
        )}
      </p>
      <button type="submit" disabled={busy} className="btn btn-ink justify-self-start">
        Sign in
      </button>
    </form>
  );
}
