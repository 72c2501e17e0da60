import type { InquiryInput } from '@flangewise/model';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { api } from '../api/client';

/** Waits until typing rests. */
const restMs = 500;

function useRested<T>(value: T): T {
  const [rested, setRested] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => setRested(value), restMs);
    return () => clearTimeout(timer);
  }, [value]);
  return rested;
}

/** What nobody has said yet and what depends on it, for the inquiry as it is typed. */
export function useOpenPoints(document: InquiryInput | undefined) {
  const text = useRested(document === undefined ? undefined : JSON.stringify(document));
  return useQuery({
    queryKey: ['inquiry-check', text],
    queryFn: ({ signal }) =>
      api.inquiries.check.mutate({ document: JSON.parse(text ?? '{}') as InquiryInput }, { signal }),
    enabled: text !== undefined,
    placeholderData: keepPreviousData,
  });
}
