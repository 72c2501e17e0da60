import { ItemsPage } from '../../../../range/items-page';

export default async function Page({ params }: { readonly params: Promise<{ readonly id: string }> }) {
  const { id } = await params;
  return <ItemsPage id={id} />;
}
