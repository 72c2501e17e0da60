import type { Metadata } from 'next';
import { Brand } from '../../look/brand';
import { SignInForm } from '../../shell/sign-in-form';

export const metadata: Metadata = { title: 'Sign in' };

export default function SignIn() {
  return (
    <main id="main" className="mx-auto grid min-h-dvh max-w-[400px] content-center px-6 py-12">
      <div className="pane px-7 pt-6 pb-8">
        <Brand />
        <h1 className="mt-8">Sign in</h1>
        <SignInForm />
      </div>
      <p className="lab mt-4 px-1">
        Inquiries, systems and offers of stirred pressure reactors. Results support, and do not replace, the
        work of a qualified pressure-equipment engineer, the notified body and local rules.
      </p>
    </main>
  );
}
