import { NewOffer } from '../../../../offer/new-offer';

export default async function Page({ params }: { readonly params: Promise<{ readonly id: string }> }) {
  const { id } = await params;
  return <NewOffer systemId={id} />;
}
