/** Why a sign-in did not succeed, in words for the person. */
export type SignInAnswer = { readonly ok: true } | { readonly ok: false; readonly message: string };

const post = (path: string, body: unknown): Promise<Response> =>
  fetch(`/api/auth/${path}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(body),
  });

export async function signIn(email: string, password: string): Promise<SignInAnswer> {
  const answer = await post('sign-in/email', { email, password }).catch(() => undefined);
  if (answer === undefined)
    return { ok: false, message: 'The server cannot be reached. Check the connection and try again.' };
  if (answer.ok) return { ok: true };
  switch (answer.status) {
    case 400:
    case 401:
      return {
        ok: false,
        message: 'No person with this e-mail address and password. Check both; passwords are case-sensitive.',
      };
    case 429:
      return { ok: false, message: 'Too many attempts. Wait a minute and try again.' };
    default:
      return { ok: false, message: `The server failed (status ${answer.status}). Try again in a moment.` };
  }
}

export async function signOut(): Promise<void> {
  await post('sign-out', {});
}
