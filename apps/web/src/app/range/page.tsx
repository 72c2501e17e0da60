import { RangePage } from '../../range/range-page';

export default function Page() {
  return <RangePage />;
}
