import { useQuery } from '@tanstack/react-query';
import type { Job } from '../shell/page';
import type { SheetLinks } from '../shell/sheets';
import { api, type Outputs } from './client';

export type InquiryRecord = Outputs['inquiries']['get'];

/** Where the sheets of the job of an inquiry are: unless one is named, its latest system and offer stand for the rest. */
export const linksOf = (inquiry: InquiryRecord, systemId?: string): SheetLinks => {
  const system = inquiry.systems.find(({ id }) => id === systemId) ?? inquiry.systems.at(-1);
  const offer =
    inquiry.offers.find((one) => system !== undefined && one.systemId === system.id) ??
    (systemId === undefined ? inquiry.offers[0] : undefined);
  return {
    Inquiry: `/inquiries/${inquiry.id}`,
    Candidates: `/inquiries/${inquiry.id}/candidates`,
    ...(system === undefined ? {} : { System: `/systems/${system.id}` }),
    ...(offer !== undefined
      ? { Offer: `/offers/${offer.id}` }
      : system === undefined
        ? {}
        : { Offer: `/systems/${system.id}/offer` }),
  };
};

/** An inquiry with its systems and offers; `systemId` says which of them the page is about. */
export function useInquiry(id: string | undefined, systemId?: string) {
  const query = useQuery({
    queryKey: ['inquiry', id],
    queryFn: () => api.inquiries.get.query({ id: id ?? '' }),
    enabled: id !== undefined,
  });
  const inquiry = query.data;
  const job: Job | undefined =
    inquiry === undefined
      ? undefined
      : { number: String(inquiry.number), title: inquiry.title, client: inquiry.document.client };
  return { inquiry, job, links: inquiry === undefined ? undefined : linksOf(inquiry, systemId), query };
}
