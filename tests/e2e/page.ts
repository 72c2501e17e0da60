import { chromium, type Page } from 'playwright-core';
import { inject, onTestFinished } from 'vitest';
import { people, type Person } from './people.js';

export interface View {
  readonly path?: string;
  readonly width?: number;
  readonly colorScheme?: 'light' | 'dark';
}

/** A page of a browser of its own at the product's address; trouble in the page fails the test that opened it. */
export async function openPage({
  path = '/',
  width = 1440,
  colorScheme = 'light',
}: View = {}): Promise<Page> {
  const browser = await chromium.launch({
    executablePath: inject('browser'),
    args: [
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--no-first-run',
    ],
  });
  onTestFinished(() => browser.close());
  const page = await browser.newPage({
    baseURL: inject('address'),
    viewport: { width, height: 900 },
    colorScheme,
  });
  // Two cores may be shared with other work; nothing here measures speed.
  page.setDefaultTimeout(90_000);
  const errors: Error[] = [];
  page.on('pageerror', (error) => errors.push(error));
  onTestFinished(() => {
    if (errors[0] !== undefined) throw errors[0];
  });
  await page.goto(path);
  return page;
}

/** Signs a person of the demo in, from whichever page asks for it. */
export async function signIn(page: Page, person: Person): Promise<void> {
  await page.getByLabel('E-mail address').fill(people[person]);
  await page.getByLabel('Password').fill(inject('password'));
  await page.getByRole('button', { name: 'Sign in' }).click();
  await page.getByRole('heading', { name: person === 'keeper' ? 'Range' : 'Inquiries', level: 1 }).waitFor();
}

/** A page on which a person is signed in. */
export async function openAs(person: Person, view: Omit<View, 'path'> = {}): Promise<Page> {
  const page = await openPage({ ...view, path: '/sign-in' });
  await signIn(page, person);
  return page;
}
