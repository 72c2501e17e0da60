'use client';

import { useState, type FormEvent } from 'react';
import { useRouter } from 'next/navigation';
import { signIn } from '../../api/sign-in';

const field = 'mt-1 block w-full rounded border border-rule bg-sheet px-2 py-2 text-given';

export default function SignIn() {
  const router = useRouter();
  const [trouble, setTrouble] = useState<string>();
  const [busy, setBusy] = useState(false);

  const submit = async (event: FormEvent<HTMLFormElement>): Promise<void> => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    setBusy(true);
    const answer = await signIn(String(form.get('email')), String(form.get('password')));
    setBusy(false);
    if (answer.ok) router.replace('/');
    else setTrouble(answer.message);
  };

  return (
    <main className="mx-auto mt-24 w-full max-w-96 border-t-[1.4px] border-ink px-6 pt-6">
      <h1 className="text-heading font-semibold">Sign in to Flangewise</h1>
      <form className="mt-4 grid gap-4" onSubmit={(event) => void submit(event)}>
        <label className="text-label text-ink2">
          E-mail address
          <input className={field} name="email" type="email" autoComplete="username" required />
        </label>
        <label className="text-label text-ink2">
          Password
          <input className={field} name="password" type="password" autoComplete="current-password" required />
        </label>
        <p role="alert" className="font-serif text-reason text-fail empty:hidden">
          {trouble}
        </p>
        <button
          type="submit"
          disabled={busy}
          className="justify-self-start rounded bg-ink px-3 py-2 font-medium text-sheet"
        >
          Sign in
        </button>
      </form>
    </main>
  );
}
