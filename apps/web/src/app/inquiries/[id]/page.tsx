import { SavedInquiry } from '../../../inquiry/saved-inquiry';

export default async function InquiryPage({ params }: { readonly params: Promise<{ readonly id: string }> }) {
  const { id } = await params;
  return <SavedInquiry id={id} />;
}
