import { CandidatesPage } from '../../../../candidates/candidates-page';

export default async function Page({ params }: { readonly params: Promise<{ readonly id: string }> }) {
  const { id } = await params;
  return <CandidatesPage inquiryId={id} />;
}
