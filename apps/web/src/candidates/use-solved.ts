import { useQuery } from '@tanstack/react-query';
import { api } from '../api/client';
import type { InquiryRecord } from '../api/use-inquiry';

/** Key of the systems that answer an inquiry as it is now. */
export const solvedKey = (inquiry: Pick<InquiryRecord, 'id' | 'document'> | undefined) =>
  ['solve', inquiry?.id, inquiry?.document] as const;

/** The systems that answer an inquiry; searched once for all pages that show them. */
export const useSolved = (inquiry: InquiryRecord | undefined) =>
  useQuery({
    queryKey: solvedKey(inquiry),
    enabled: inquiry !== undefined,
    queryFn: ({ signal }) => api.systems.solve.query({ inquiryId: inquiry?.id ?? '' }, { signal }),
    staleTime: Number.POSITIVE_INFINITY,
  });
