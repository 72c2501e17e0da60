import { OfferPage } from '../../../offer/offer-page';

export default async function Page({ params }: { readonly params: Promise<{ readonly id: string }> }) {
  const { id } = await params;
  return <OfferPage id={id} />;
}
