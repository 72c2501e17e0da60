'use client';

import type { InquiryInput } from '@flangewise/model';
import { useRouter } from 'next/navigation';
import { useMemo } from 'react';
import { api } from '../api/client';
import { InquiryForm } from './inquiry-form';

const empty: Partial<InquiryInput> = { process: { media: [] }, sets: [{}] };

export function NewInquiry() {
  const router = useRouter();
  const links = useMemo(() => ({ Inquiry: '/inquiries/new' }), []);
  return (
    <InquiryForm
      id="new"
      document={empty}
      links={links}
      save={async (document) => (await api.inquiries.create.mutate({ document })).id}
      onSaved={(id, goOn) => router.push(goOn ? `/inquiries/${id}/candidates` : `/inquiries/${id}`)}
    />
  );
}
