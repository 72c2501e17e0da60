import { expect, inject, it } from 'vitest';
import { openPage, signIn } from './page.js';

it('signs the engineer in and out', async () => {
  const page = await openPage();
  await page.waitForURL(/\/sign-in/);
  await signIn(page, 'engineer');
  await page.getByText('Ilse Tamrin, applications engineer').waitFor();
  expect(new URL(page.url()).pathname).toBe('/');
  await page.reload();
  await page.getByRole('button', { name: 'account and appearance' }).click();
  await page.getByRole('menuitem', { name: 'Sign out' }).click();
  await page.waitForURL(/\/sign-in/);
  await page.goto('/');
  await page.waitForURL(/\/sign-in/);
});

it('signs a customer in for their company', async () => {
  const page = await openPage({ path: '/sign-in' });
  await signIn(page, 'sundrey');
  await page.getByText('Lena Quorish, Sundrey Fine Chemicals').waitFor();
});

it('says what to do about a wrong password', async () => {
  const page = await openPage({ path: '/sign-in' });
  await page.getByLabel('E-mail address').fill('engineer@averholt.example');
  await page.getByLabel('Password').fill('not the password');
  await page.getByRole('button', { name: 'Sign in' }).click();
  await page.getByRole('alert').getByText('No person with this e-mail address and password').waitFor();
});

it('works under the other name of this machine', async () => {
  const page = await openPage();
  await page.waitForURL(/\/sign-in/);
  await page.goto(inject('address').replace('127.0.0.1', 'localhost'));
  await page.waitForURL(/\/sign-in/);
  await signIn(page, 'approver');
  await page.getByText('Marit Oswaldine, approver').waitFor();
});
