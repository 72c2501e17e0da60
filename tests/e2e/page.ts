import { chromium, type Page } from 'playwright-core';
import { inject, onTestFinished } from 'vitest';

/** A page of a browser of its own at the product's address; trouble in the page fails the test that opened it. */
export async function openPage(path = '/'): Promise<Page> {
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
  const page = await browser.newPage({ baseURL: inject('address') });
  const errors: Error[] = [];
  page.on('pageerror', (error) => errors.push(error));
  onTestFinished(() => {
    if (errors[0] !== undefined) throw errors[0];
  });
  await page.goto(path);
  return page;
}

/** Signs a person of the demo in, from whichever page asks for it. */
export async function signIn(page: Page, email: string): Promise<void> {
  await page.getByLabel('E-mail address').fill(email);
  await page.getByLabel('Password').fill(inject('password'));
  await page.getByRole('button', { name: 'Sign in' }).click();
}
