import { SystemPage } from '../../../system/system-page';

export default async function Page({ params }: { readonly params: Promise<{ readonly id: string }> }) {
  const { id } = await params;
  return <SystemPage id={id} />;
}
