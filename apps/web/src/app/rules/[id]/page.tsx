import { RulePage } from '../../../rules/rule-page';

export default async function Page({ params }: { readonly params: Promise<{ readonly id: string }> }) {
  const { id } = await params;
  return <RulePage id={id} />;
}
