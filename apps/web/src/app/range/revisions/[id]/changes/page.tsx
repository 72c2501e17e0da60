import { ChangesPage } from '../../../../../range/changes-page';

export default async function Page({ params }: { readonly params: Promise<{ readonly id: string }> }) {
  const { id } = await params;
  return <ChangesPage id={id} />;
}
