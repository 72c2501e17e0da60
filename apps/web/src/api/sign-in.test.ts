import { afterEach, expect, it, vi } from 'vitest';
import { signIn } from './sign-in';

afterEach(() => vi.unstubAllGlobals());

const answered = async (status: number, body: string): Promise<unknown> => {
  vi.stubGlobal('fetch', () => Promise.resolve(new Response(body, { status })));
  return signIn('engineer@averholt.example', 'guess');
};

it('says after too many attempts how long to wait, as the server has it', async () => {
  const message = 'Too many attempts with this e-mail address. Wait 15 min, then try again.';
  expect(await answered(429, JSON.stringify({ error: { message } }))).toEqual({ ok: false, message });
});

it.each([429, 502])('says that the server failed where status %i comes without words', async (status) => {
  const message = `The server failed (status ${status}). Try again in a moment.`;
  expect(await answered(status, '<html>')).toEqual({ ok: false, message });
});
