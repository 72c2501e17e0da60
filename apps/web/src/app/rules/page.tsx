import { RulesPage } from '../../rules/rules-page';

export default function Page() {
  return <RulesPage />;
}
