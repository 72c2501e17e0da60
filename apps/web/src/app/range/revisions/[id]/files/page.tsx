import { FilesPage } from '../../../../../range/files-page';

export default async function Page({ params }: { readonly params: Promise<{ readonly id: string }> }) {
  const { id } = await params;
  return <FilesPage id={id} />;
}
