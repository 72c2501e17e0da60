import { RevisionsPage } from '../../../range/revisions-page';

export default function Page() {
  return <RevisionsPage />;
}
