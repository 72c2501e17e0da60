import { AuditPage } from '../../../../../range/audit-page';

export default async function Page({ params }: { readonly params: Promise<{ readonly id: string }> }) {
  const { id } = await params;
  return <AuditPage id={id} />;
}
