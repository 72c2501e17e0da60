import { CandidatePage } from '../../../../../candidates/candidate-page';

export default async function Page({
  params,
}: {
  readonly params: Promise<{ readonly id: string; readonly name: string }>;
}) {
  const { id, name } = await params;
  return <CandidatePage inquiryId={id} name={name} />;
}
