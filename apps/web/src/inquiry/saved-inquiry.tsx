'use client';

import { useRouter } from 'next/navigation';
import { api } from '../api/client';
import { useInquiry } from '../api/use-inquiry';
import { useMe } from '../api/use-me';
import { whyNotChange } from '../api/why-not-change';
import { Loading } from '../shell/loading';
import { InquiryForm } from './inquiry-form';

export function SavedInquiry({ id }: { readonly id: string }) {
  const router = useRouter();
  const me = useMe();
  const { inquiry, links, job, query } = useInquiry(id);
  if (inquiry === undefined || me === undefined)
    return <Loading sheet="Inquiry" what="the inquiry" query={query} />;
  return (
    <InquiryForm
      key={id}
      id={id}
      document={inquiry.document}
      job={job}
      links={links}
      whyNot={whyNotChange(me, inquiry)}
      save={async (document) => {
        await api.inquiries.update.mutate({ id, document });
        return id;
      }}
      onSaved={(_, goOn) => {
        if (goOn) router.push(`/inquiries/${id}/candidates`);
      }}
    />
  );
}
