import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { AppRouter } from '@flangewise/api';
import type { InquiryInput } from '@flangewise/model';
import { createTRPCClient, httpLink, type TRPCClient } from '@trpc/client';
import type { Page } from 'playwright-core';
import { inject } from 'vitest';
import { checkout } from '../run/command.js';

export type Api = TRPCClient<AppRouter>;

/** The procedures of the product as the person who is signed in on a page. */
export async function apiOf(page: Page): Promise<Api> {
  const cookies = await page.context().cookies();
  const cookie = cookies.map(({ name, value }) => `${name}=${value}`).join('; ');
  const origin = inject('address');
  return createTRPCClient<AppRouter>({
    links: [httpLink({ url: `${origin}/api/trpc`, headers: { cookie, origin } })],
  });
}

/** A file of the inquiries that the acceptance tests read. */
export const inquiryFile = (name: string): string =>
  join(checkout, 'tests', 'acceptance', 'inquiries', `${name}.json`);

export const readInquiry = (name: string): InquiryInput =>
  JSON.parse(readFileSync(inquiryFile(name), 'utf8')) as InquiryInput;

export interface Job {
  readonly inquiryId: string;
  readonly systemId: string;
}

/** An inquiry with the first system that answers it, saved without the pages. */
export async function saveJob(api: Api, document: InquiryInput): Promise<Job> {
  const { id: inquiryId } = await api.inquiries.create.mutate({ document });
  const { candidates } = await api.systems.solve.query({ inquiryId, most: 1 });
  const [first] = candidates;
  if (first === undefined) throw new Error(`a system was to fit "${document.title}"; none does`);
  const { id: systemId } = await api.systems.create.mutate({ inquiryId, system: first.system });
  return { inquiryId, systemId };
}
