'use client';

import { useEffect, useState } from 'react';
import { useRouter } from 'next/navigation';
import { api } from '../api/client';
import { signOut } from '../api/sign-in';

type Me = Awaited<ReturnType<typeof api.session.me.query>>;

export default function Home() {
  const router = useRouter();
  const [me, setMe] = useState<Me>();

  useEffect(() => {
    api.session.me.query().then(setMe, () => router.replace('/sign-in'));
  }, [router]);

  const leave = async (): Promise<void> => {
    await signOut();
    router.replace('/sign-in');
  };

  return (
    <>
      <header className="flex h-12 items-center gap-6 border-b border-hair bg-sheet px-6">
        <span className="text-reason font-semibold">Flangewise</span>
        <span className="grow" />
        {me !== undefined && (
          <>
            <span className="text-ink2">
              {me.name}, {me.client?.name ?? me.roleTitle}
            </span>
            <button
              type="button"
              className="rounded border border-rule px-3 py-1 font-medium"
              onClick={() => void leave()}
            >
              Sign out
            </button>
          </>
        )}
      </header>
      <main className="p-6">
        <h1 className="text-heading font-semibold">Inquiries</h1>
      </main>
    </>
  );
}
