/** Why a sign-in did not succeed, in words for the person. */
export type SignInAnswer = { readonly ok: true } | { readonly ok: false; readonly message: string };

const post = (path: string, body: unknown): Promise<Response> =>
  fetch(`/api/auth/${path}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(body),
  });

/** How long to wait is known to the server alone; undefined where it was not the API that refused. */
const refusalOf = async (answer: Response): Promise<string | undefined> => {
  const told = (await answer.json().catch(() => undefined)) as
    { readonly error?: { readonly message?: string } } | undefined;
  return told?.error?.message;
};

const failed = (status: number): string => `The server failed (status ${status}). Try again in a moment.`;

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
      return { ok: false, message: (await refusalOf(answer)) ?? failed(answer.status) };
    default:
      return { ok: false, message: failed(answer.status) };
  }
}

export async function signOut(): Promise<void> {
  await post('sign-out', {});
}
